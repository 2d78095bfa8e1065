import{A as ep,B as np,C as Le,D as op,E as ip,F as sp,G as ot,H as $t,I as rp,J as ap,K as ue,L as sn,M as Di,N as We,O as al,P as lp,Q as up,S as dp,T as cp,U as pp,a as Ic,b as jc,c as Q,d as v,e as qc,f as Hc,g as Ri,h as zs,i as Ot,j as Do,k as Nc,l as Uc,m as Si,n as zc,o as Jc,p as Ai,q as Vc,r as Kc,s as Js,t as Qc,u as Gc,v as Yc,w as Zc,x as Xc,y as xn,z as tp}from"./chunk-NOD6VTU6.js";var Vs=globalThis,Qs=Vs.ShadowRoot&&(Vs.ShadyCSS===void 0||Vs.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,fp=Symbol(),mp=new WeakMap,Ks=class{constructor(e,n,o){if(this._$cssResult$=!0,o!==fp)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=n}get styleSheet(){let e=this.o,n=this.t;if(Qs&&e===void 0){let o=n!==void 0&&n.length===1;o&&(e=mp.get(n)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),o&&mp.set(n,e))}return e}toString(){return this.cssText}},hp=t=>new Ks(typeof t=="string"?t:t+"",void 0,fp);var gp=(t,e)=>{if(Qs)t.adoptedStyleSheets=e.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of e){let o=document.createElement("style"),i=Vs.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,t.appendChild(o)}},ll=Qs?t=>t:t=>t instanceof CSSStyleSheet?(e=>{let n="";for(let o of e.cssRules)n+=o.cssText;return hp(n)})(t):t;var{is:sb,defineProperty:rb,getOwnPropertyDescriptor:ab,getOwnPropertyNames:lb,getOwnPropertySymbols:ub,getPrototypeOf:db}=Object,Gs=globalThis,_p=Gs.trustedTypes,cb=_p?_p.emptyScript:"",pb=Gs.reactiveElementPolyfillSupport,Pi=(t,e)=>t,ul={toAttribute(t,e){switch(e){case Boolean:t=t?cb:null;break;case Object:case Array:t=t==null?t:JSON.stringify(t)}return t},fromAttribute(t,e){let n=t;switch(e){case Boolean:n=t!==null;break;case Number:n=t===null?null:Number(t);break;case Object:case Array:try{n=JSON.parse(t)}catch{n=null}}return n}},wp=(t,e)=>!sb(t,e),$p={attribute:!0,type:String,converter:ul,reflect:!1,useDefault:!1,hasChanged:wp};Symbol.metadata??=Symbol("metadata"),Gs.litPropertyMetadata??=new WeakMap;var rn=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,n=$p){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(e,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(e,o,n);i!==void 0&&rb(this.prototype,e,i)}}static getPropertyDescriptor(e,n,o){let{get:i,set:s}=ab(this.prototype,e)??{get(){return this[n]},set(a){this[n]=a}};return{get:i,set(a){let d=i?.call(this);s?.call(this,a),this.requestUpdate(e,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??$p}static _$Ei(){if(this.hasOwnProperty(Pi("elementProperties")))return;let e=db(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(Pi("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(Pi("properties"))){let n=this.properties,o=[...lb(n),...ub(n)];for(let i of o)this.createProperty(i,n[i])}let e=this[Symbol.metadata];if(e!==null){let n=litPropertyMetadata.get(e);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let n=[];if(Array.isArray(e)){let o=new Set(e.flat(1/0).reverse());for(let i of o)n.unshift(ll(i))}else e!==void 0&&n.push(ll(e));return n}static _$Eu(e,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(e.set(o,this[o]),delete this[o]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return gp(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,n,o){this._$AK(e,o)}_$ET(e,n){let o=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:ul).toAttribute(n,o.type);this._$Em=e,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(e,n){let o=this.constructor,i=o._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),a=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:ul;this._$Em=i;let d=a.fromAttribute(n,s.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(e,n,o,i=!1,s){if(e!==void 0){let a=this.constructor;if(i===!1&&(s=this[e]),o??=a.getPropertyOptions(e),!((o.hasChanged??wp)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(e)&&!this.hasAttribute(a._$Eu(e,o))))return;this.C(e,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,n,{useDefault:o,reflect:i,wrapped:s},a){o&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,a??n??this[e]),s!==!0||a!==void 0)||(this._$AL.has(e)||(this.hasUpdated||o||(n=void 0),this._$AL.set(e,n)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:a}=s,d=this[i];a!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,s,d)}}let e=!1,n=this._$AL;try{e=this.shouldUpdate(n),e?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw e=!1,this._$EM(),o}e&&this._$AE(n)}willUpdate(e){}_$AE(e){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(e){}firstUpdated(e){}};rn.elementStyles=[],rn.shadowRootOptions={mode:"open"},rn[Pi("elementProperties")]=new Map,rn[Pi("finalized")]=new Map,pb?.({ReactiveElement:rn}),(Gs.reactiveElementVersions??=[]).push("2.1.2");var cl=globalThis,bp=t=>t,Ys=cl.trustedTypes,yp=Ys?Ys.createPolicy("lit-html",{createHTML:t=>t}):void 0,pl="$lit$",an=`lit$${Math.random().toFixed(9).slice(2)}$`,ml="?"+an,mb=`<${ml}>`,eo=document,Mi=()=>eo.createComment(""),Fi=t=>t===null||typeof t!="object"&&typeof t!="function",fl=Array.isArray,Sp=t=>fl(t)||typeof t?.[Symbol.iterator]=="function",dl=`[ 	
\f\r]`,Oi=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,vp=/-->/g,kp=/>/g,Xn=RegExp(`>|${dl}(?:([^\\s"'>=/]+)(${dl}*=${dl}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),xp=/'/g,Tp=/"/g,Ap=/^(?:script|style|textarea|title)$/i,hl=t=>(e,...n)=>({_$litType$:t,strings:e,values:n}),r=hl(1),R=hl(2),aD=hl(3),Mt=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Rp=new WeakMap,to=eo.createTreeWalker(eo,129);function Dp(t,e){if(!fl(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return yp!==void 0?yp.createHTML(e):e}var Pp=(t,e)=>{let n=t.length-1,o=[],i,s=e===2?"<svg>":e===3?"<math>":"",a=Oi;for(let d=0;d<n;d++){let c=t[d],p,m,_=-1,w=0;for(;w<c.length&&(a.lastIndex=w,m=a.exec(c),m!==null);)w=a.lastIndex,a===Oi?m[1]==="!--"?a=vp:m[1]!==void 0?a=kp:m[2]!==void 0?(Ap.test(m[2])&&(i=RegExp("</"+m[2],"g")),a=Xn):m[3]!==void 0&&(a=Xn):a===Xn?m[0]===">"?(a=i??Oi,_=-1):m[1]===void 0?_=-2:(_=a.lastIndex-m[2].length,p=m[1],a=m[3]===void 0?Xn:m[3]==='"'?Tp:xp):a===Tp||a===xp?a=Xn:a===vp||a===kp?a=Oi:(a=Xn,i=void 0);let b=a===Xn&&t[d+1].startsWith("/>")?" ":"";s+=a===Oi?c+mb:_>=0?(o.push(p),c.slice(0,_)+pl+c.slice(_)+an+b):c+an+(_===-2?d:b)}return[Dp(t,s+(t[n]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),o]},Ci=class t{constructor({strings:e,_$litType$:n},o){let i;this.parts=[];let s=0,a=0,d=e.length-1,c=this.parts,[p,m]=Pp(e,n);if(this.el=t.createElement(p,o),to.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=to.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(pl)){let w=m[a++],b=i.getAttribute(_).split(an),k=/([.?@])?(.*)/.exec(w);c.push({type:1,index:s,name:k[2],strings:b,ctor:k[1]==="."?Xs:k[1]==="?"?tr:k[1]==="@"?er:oo}),i.removeAttribute(_)}else _.startsWith(an)&&(c.push({type:6,index:s}),i.removeAttribute(_));if(Ap.test(i.tagName)){let _=i.textContent.split(an),w=_.length-1;if(w>0){i.textContent=Ys?Ys.emptyScript:"";for(let b=0;b<w;b++)i.append(_[b],Mi()),to.nextNode(),c.push({type:2,index:++s});i.append(_[w],Mi())}}}else if(i.nodeType===8)if(i.data===ml)c.push({type:2,index:s});else{let _=-1;for(;(_=i.data.indexOf(an,_+1))!==-1;)c.push({type:7,index:s}),_+=an.length-1}s++}}static createElement(e,n){let o=eo.createElement("template");return o.innerHTML=e,o}};function no(t,e,n=t,o){if(e===Mt)return e;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=Fi(e)?void 0:e._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(t),i._$AT(t,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(e=no(t,i._$AS(t,e.values),i,o)),e}var Zs=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:o}=this._$AD,i=(e?.creationScope??eo).importNode(n,!0);to.currentNode=i;let s=to.nextNode(),a=0,d=0,c=o[0];for(;c!==void 0;){if(a===c.index){let p;c.type===2?p=new Po(s,s.nextSibling,this,e):c.type===1?p=new c.ctor(s,c.name,c.strings,this,e):c.type===6&&(p=new nr(s,this,e)),this._$AV.push(p),c=o[++d]}a!==c?.index&&(s=to.nextNode(),a++)}return to.currentNode=eo,i}p(e){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(e,o,n),n+=o.strings.length-2):o._$AI(e[n])),n++}},Po=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=no(this,e,n),Fi(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==Mt&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):Sp(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&Fi(this._$AH)?this._$AA.nextSibling.data=e:this.T(eo.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:o}=e,i=typeof o=="number"?this._$AC(e):(o.el===void 0&&(o.el=Ci.createElement(Dp(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new Zs(i,this),a=s.u(this.options);s.p(n),this.T(a),this._$AH=s}}_$AC(e){let n=Rp.get(e.strings);return n===void 0&&Rp.set(e.strings,n=new Ci(e)),n}k(e){fl(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of e)i===n.length?n.push(o=new t(this.O(Mi()),this.O(Mi()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){let o=bp(e).nextSibling;bp(e).remove(),e=o}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},oo=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,o,i,s){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(e,n=this,o,i){let s=this.strings,a=!1;if(s===void 0)e=no(this,e,n,0),a=!Fi(e)||e!==this._$AH&&e!==Mt,a&&(this._$AH=e);else{let d=e,c,p;for(e=s[0],c=0;c<s.length-1;c++)p=no(this,d[o+c],n,c),p===Mt&&(p=this._$AH[c]),a||=!Fi(p)||p!==this._$AH[c],p===u?e=u:e!==u&&(e+=(p??"")+s[c+1]),this._$AH[c]=p}a&&!i&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},Xs=class extends oo{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},tr=class extends oo{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},er=class extends oo{constructor(e,n,o,i,s){super(e,n,o,i,s),this.type=5}_$AI(e,n=this){if((e=no(this,e,n,0)??u)===Mt)return;let o=this._$AH,i=e===u&&o!==u||e.capture!==o.capture||e.once!==o.once||e.passive!==o.passive,s=e!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},nr=class{constructor(e,n,o){this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(e){no(this,e)}},Op={M:pl,P:an,A:ml,C:1,L:Pp,R:Zs,D:Sp,V:no,I:Po,H:oo,N:tr,U:er,B:Xs,F:nr},fb=cl.litHtmlPolyfillSupport;fb?.(Ci,Po),(cl.litHtmlVersions??=[]).push("3.3.3");var de=(t,e,n)=>{let o=n?.renderBefore??e,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new Po(e.insertBefore(Mi(),s),s,void 0,n??{})}return i._$AI(t),i};var gl=globalThis,Oo=class extends rn{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=de(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Mt}};Oo._$litElement$=!0,Oo.finalized=!0,gl.litElementHydrateSupport?.({LitElement:Oo});var hb=gl.litElementPolyfillSupport;hb?.({LitElement:Oo});(gl.litElementVersions??=[]).push("4.2.2");var Mp=()=>{},_l=!1;function Fp(t){Mp=t}function nt(){_l||(_l=!0,queueMicrotask(()=>{_l=!1,Mp()}))}function Cp(t){return t.split("/").slice(1).map(e=>e.replaceAll("~1","/").replaceAll("~0","~"))}var B=t=>t.replaceAll("~","~0").replaceAll("/","~1");function $(t,e){let n=t;for(let o of Cp(e)){if(n===null||typeof n!="object")return;n=n[o]}return n}function P(t,e,n){return $l(t,Cp(e),n)}function $l(t,e,n){let[o,...i]=e;if(o===void 0)return n;if(Array.isArray(t)){let d=[...t],c=$l(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let s={...t??{}},a=$l(s[o],i,n);return a===void 0?delete s[o]:s[o]=a,s}var Lp=t=>Hc("GET",`/api/bench?run=${encodeURIComponent(t)}`),Wp=t=>Ri("/api/bench/tick",t),Bp=t=>Ri("/api/bench/weigh_cup",t),Ep=(t,e)=>Ri("/api/bench/anew",{run:t,batch:e}),Ip=(t,e)=>Ri("/api/bench/finish",{run:t,batch:e});var st=(t,e)=>({name:t,label:e,unit:"mm"}),Tn=st("height","Floor to brim"),or={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},wl={block:{words:"Box, loaf or slab",measures:[st("length","Longer side at the brim"),st("width","Shorter side"),Tn,or,{...st("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[st("floor_diameter","Across the floor"),st("brim_diameter","Across the brim"),Tn]},fluted_cup:{words:"Fluted cup",measures:[st("floor_diameter","Across the floor"),st("brim_diameter","Across the brim"),Tn,{name:"flutes",label:"Flutes",unit:"",count:!0},st("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},st("across_flats","Across the flats"),Tn,or]},dome:{words:"Bowl",measures:[st("diameter","Across the brim"),Tn]},half_ball:{words:"Half ball",measures:[st("diameter","Across the brim")]},ball:{words:"Ball",measures:[st("diameter","Across")]},half_ring:{words:"Half ring",measures:[st("centre_diameter","Ring, middle to middle of the tube"),st("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[st("outer_floor_diameter","Cup, across the floor"),st("outer_brim_diameter","Cup, across the brim"),st("post_floor_diameter","Post, at its foot"),st("post_brim_diameter","Post, at its top"),Tn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[st("height","Height"),st("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Tn,or],points:{columns:[st("x","From the left"),st("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[st("side","Straight edge, tip to round"),Tn,or]}},jp=Object.fromEntries(Object.entries(wl).map(([t,{words:e}])=>[t,e])),Mo=t=>wl[t]?.measures??[],Rn=t=>wl[t]?.points;var bl=(t,e)=>String($(t,e)??"").trim(),Li=t=>bl(t,"/shape/kind"),ye=(t,e)=>$(t,`/${e}`)!==void 0,yl=t=>["body","skin"].includes(bl(t,"/mesh/role"));function Zt(t,e){let n=$(t,e);return Array.isArray(n)?n:[]}function qp(t,e){return(Rn(Li(t))?.columns??[]).map(({name:o})=>String($(e,`/${o}`)??"").trim())}function Wi(t){return Zt(t,"/shape/points").flatMap((e,n)=>qp(t,e).every(Boolean)?[n]:[])}function ir(t){let e=n=>n.some(Boolean)&&!n.every(Boolean);return Zt(t,"/shape/points").flatMap((n,o)=>e(qp(t,n))?[o]:[])}var vl=t=>Zt(t,"/water/weighings").flatMap((e,n)=>String(e).trim()?[n]:[]);function Hp(t){let e=t,n=(o,i)=>{if(!Array.isArray($(e,o)))return;let s=i.map(a=>$(t,`${o}/${a}`));e=P(e,o,s)};return Rn(Li(t))&&n("/shape/points",Wi(t)),n("/water/weighings",vl(t)),e}function sr(t,e){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!n)return e;let s=n==="/shape/points"?Wi(t):vl(t);return`${n}/${s[Number(o)]??o}${i}`}function Bi(t){let e=[],n=i=>bl(t,i)!=="",o=(i,s)=>{i||e.push(s)};if(ye(t,"shape")){let i=Li(t);o(i!=="","the shape");for(let{name:a,label:d,optional:c}of Mo(i))o(c||n(`/shape/${a}`),d.toLowerCase());let s=Rn(i);s&&o(Wi(t).length>=s.least,`${s.least} points at least`)}if(ye(t,"water")){o(n("/water/temperature"),"the water's temperature"),o($(t,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(t,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(vl(t).length>0,"a weighing of water")}return!yl(t)&&!ye(t,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),e}var zt=t=>t.slice(0,t.lastIndexOf("/")+1),Xt=t=>t.slice(t.lastIndexOf("/")+1),ln=(t,e)=>{let n=zt(t);return n?gb(n+e):e};function gb(t){let e=[];for(let n of t.split("/"))n===".."?e.pop():n!=="."&&e.push(n);return e.join("/")}function ve(t,e){return(t.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+e}function Fo(t,e){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(t)??["",t,""];for(let i=1;;++i){let s=i===1?t:`${n}_${i}${o}`;if(!e.some(a=>a.file===s))return s}}var _b=["mould","formula","run","file","own_fats","own_tips"];function kl(t,e=""){return t===null||typeof t!="object"?[]:Object.entries(t).flatMap(([n,o])=>{let i=`${e}/${n}`;return typeof o!="string"?kl(o,i):_b.includes(n)?[i]:[]})}function xl(t,e){let[n,o]=[t,e];for(let i of["/$schema","/id",...kl(t)])[n,o]=[P(n,i,void 0),P(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function Tl(t,e){let n=["/id",...kl(t)].filter(o=>$(t,o)!==$(e,o));return o=>n.reduce((i,s)=>$(i,s)===$(t,s)?P(i,s,$(e,s)):i,o)}var io={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:t,file:e,now:n})=>t?Xt(e):ve(String(n.name),".run.json"),written:t=>t,is_begun:()=>!0},so={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:t})=>ve(String(t.for??"order"),".order.json"),written:t=>t,is_begun:()=>!0},Co={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:t,file:e,now:n})=>t?Xt(e):ve(String(n.name),".formula.json"),written:t=>t,is_begun:()=>!0},Rl=(t,e,n)=>({name:t,list:e,called:n,has_id:!1,new_name:({file:o})=>Xt(o),written:o=>o,is_begun:()=>!0}),Ei=Rl("studio","studios","name"),Be=Rl("fats","fats"),Sn=Rl("tips","tips","title"),Jt={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:t})=>ve(String(t.name),".json"),written:t=>({...Hp(t),name:String(t.name??"").trim()}),is_begun:t=>ye(t,"shape")||ye(t,"mesh")};var Np={},Up={kind:io,id:"",file:"",version:null,shipped:!1,now:Np,saved:Np,unanswered:[]},Ft={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:Up,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(bb()),folded:new Set,units:$b(),announcement:""},l=Ft;function $b(){let t=localStorage.getItem("units");return t==="metric"||t==="us"?t:"both"}var Sl=t=>`numbers ${String(t.now.id??t.file)}`,wb=t=>({numbers:localStorage.getItem(Sl(t))??void 0,figure:""});function Ii(t){h({quote_wish:{...Ft.quote_wish,...t}});let{numbers:e}=Ft.quote_wish;e?.trim()?localStorage.setItem(Sl(Ft.run),e):localStorage.removeItem(Sl(Ft.run))}var zp="set-up ";function bb(){try{let t=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(t)?t.filter(e=>typeof e=="string"):[]}catch{return[]}}function yb(){let t=[...Ft.open].filter(e=>e.startsWith(zp));localStorage.setItem("parts",JSON.stringify(t))}function h(t){Object.assign(Ft,t),nt()}var q=t=>h({announcement:t});function y(t,e){Object.assign(t,e),nt()}function Ee(t,e){let{[t]:n,...o}=Ft.formulas;h({formulas:e?{...o,[t]:e}:o})}function qt(t,e){let n=new Set(Ft[t]);n.delete(e)||n.add(e),h({[t]:n}),e.startsWith(zp)&&yb()}function Lo(t=Up){h({run:t,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,quote_wish:wb(t),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function rt(t){Ft.open.has(t)||h({open:new Set(Ft.open).add(t)})}function ro({list:t,called:e},n,o={}){if(!Ft.files)return;let i=Ft.files[t].findIndex(d=>d.file===n),s={...i<0?{}:Ft.files[t][i],file:n,name:String((e&&o[e])??""),note:String(o.note??""),shipped:!1},a=Ft.files[t].filter(d=>d.file!==n);a.splice(i<0?a.length:i,0,s),h({files:{...Ft.files,[t]:a}})}var vb=1e4,Al=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",Al);var rr=[],Wo=()=>`bench ${l.files?.folder??""}`;function te(){try{return[...JSON.parse(localStorage.getItem(Wo())??"[]"),...rr]}catch{return rr}}function Dl(t){try{t.length?localStorage.setItem(Wo(),JSON.stringify(t)):localStorage.removeItem(Wo()),rr=[]}catch{rr=t}}var kb=(t,e)=>t.run===e.run&&t.batch===e.batch&&t.key===e.key;function Jp(t){let e={...t,id:crypto.randomUUID(),tab:Al,at:Date.now()};Dl([...te().filter(n=>!kb(n,e)),e])}var ar=t=>Dl(te().filter(e=>!t(e))),Vp=(t,e)=>Dl(te().map(n=>n.run===t?{...n,run:e}:n)),Pl=()=>te().find(t=>t.tab===Al||Date.now()-t.at>vb);var ct=["pour","pipe","apart"],wt=["studio","own_fats","own_tips"],lr=t=>wt.includes(t);var Ol=t=>[...new Set(t.flatMap(e=>l.formulas[e]??[]))],Ml=()=>wt.flatMap(t=>l.beside[t]??[]),Kp=t=>t.filter(e=>e.theirs),un=t=>Kp([...Ol(t==="apart"?["apart"]:["pour","pipe"]),...Ml()])[0],ur=()=>[l.run,...Ol(ct),...Ml()].filter(t=>t.is_taken&&!t.theirs),dr=()=>Kp([l.run,...Ol(ct),...Ml()]);var ji=()=>l.formulas.apart?"apart":"run",Qp=t=>h({dangers:{...l.dangers,[ji()]:t}});function Fl(t){let e=t.cautions.filter(n=>n.severity==="danger");Qp(e.map(({text:n,topic:o,batter:i,batch_pieces:s})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:s})))}function Gp(t){t.lye_heavy&&Qp([{text:Q(t),is_of_heat:!1}])}var Yp={};function ke(t,e){(Yp[t]??=[]).push(e)}function vt(t,e){for(let n of Yp[t]??[])n(e)}async function ce({kind:t,name:e,text:n,from:o,goes_on:i,about_to:s,is_own:a}){for(;;){let{runs:d=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:w=[],tips:b=[]}=l.files??{},k=Fo(e,[...d,...c,...p,...m,..._,...w,...b]);s?.(k);let U=await xb({file:k,version:null,text:n,from:o,goes_on:i});if(ro(t,k,$t(U.there.text)??{}),U.is_new||a?.(U.there))return U.there}}async function xb(t){try{return{is_new:!0,there:await Do(t)}}catch(e){if(!(e instanceof v)||e.status!==409)throw e;return{is_new:!1,there:e.answer}}}var cr=t=>`unsaved ${t.name} ${l.files?.folder??""} `;function ao({kind:t,id:e,file:n,version:o,shipped:i,now:s},a){if(t.is_begun(s))try{let d={id:e,file:n,version:o,shipped:i,text:ot(s),copy:a};localStorage.setItem(cr(t)+e,JSON.stringify(d))}catch{}}function Cl(t,e){try{return JSON.parse(localStorage.getItem(cr(t)+e)??"null")??void 0}catch{return}}var An=(t,e)=>localStorage.removeItem(cr(t)+e),Zp=()=>Object.keys(localStorage).some(t=>t.startsWith("unsaved "));function pr(t){let e=cr(t);return Object.keys(localStorage).flatMap(o=>o.startsWith(e)?[o.slice(e.length)]:[]).sort().flatMap(o=>Cl(t,o)??[])}var Tb=300,J=t=>t.now!==t.saved;function lo(t,e,n=crypto.randomUUID()){return{kind:t,id:n,file:"",version:null,shipped:!1,now:e,saved:void 0,unanswered:[]}}async function Ct(t,e,n=e){let o=await cp(e),i=Rb(t,JSON.parse(o.text),o.shipped),s=Cl(t,n),a=s?.copy&&o.shipped?await Sb(t,s,i):void 0;if(a)return An(t,n),Ct(t,a);let{version:d,shipped:c=!1}=o,p={kind:t,id:n,file:e,version:d,shipped:c,now:i,saved:i,unanswered:[]};return s&&Ab(p,s,o),p}var Rb=(t,e,n=!1)=>t.has_id&&!n&&e.id===void 0?{...e,id:crypto.randomUUID()}:e;async function Sb(t,e,n){if(!l.files?.[t.list].some(s=>s.file===e.copy))return;let o=$t(e.text),i=$t((await Ot(e.copy)).text);if(!(!o||!i||ot(o)===ot(n)))return xl(t.written(o),i)?e.copy:void 0}function Ab(t,e,n){let o=$t(e.text);if(!o||ot(o)===ot(t.now))return An(t.kind,t.id);y(t,{now:o}),!(e.version===n.version||n.shipped)&&(y(t,{version:e.version}),rm(t,n))}function xt(t,e){let n=t.now;y(t,{now:e,failed:void 0,...t.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),ao(t),vt("edited",{file:t,before:n})}var Xp=new WeakMap,Ll=async t=>Xp.get(t),Ie=t=>tm(t,()=>Db(t)),Bo=t=>tm(t,()=>t.shipped?em(t,nm):Promise.resolve());function tm(t,e){let n=Ll(t).then(e);return Xp.set(t,n.catch(()=>{})),n}async function Db(t){!J(t)||t.theirs||await em(t,t.shipped||!t.file?nm:om)}async function em(t,e){y(t,{failed:void 0});try{await e(t)}catch(n){throw n instanceof v&&y(t,{failed:Q(n.complaint)}),n}}async function nm(t){let{kind:e,id:n,now:o}=t,i=t.shipped?t.file:void 0,s=e.written(o),a=await ce({kind:e,name:e.new_name(t),text:ot(s),from:i,goes_on:i!==void 0&&e.name==="run",about_to:m=>ao(t,m),is_own:({text:m})=>i!==void 0&&xl(s,$t(m)??{})}),d=JSON.parse(a.text),c=Tl(s,d),p=t.now===o?d:c(t.now);An(e,n),y(t,{id:a.file,file:a.file,version:a.version,shipped:!1,now:p,saved:d}),J(t)&&ao(t),i!==void 0&&vt("copied",{file:t,from:i,renamed:c})}async function om(t){let{version:e,now:n}=t,o=ot(t.kind.written(n));y(t,{unanswered:[...new Set(t.unanswered).add(o)]});try{mr(t,n,(await Do({file:t.file,version:e,text:o})).version)}catch(i){if(!(i instanceof v)||i.status!==409)throw i;im(t,i.answer),J(t)&&!t.theirs&&await om(t)}}function mr(t,e,n){y(t,{saved:e,version:n,theirs:void 0,failed:void 0,unanswered:[]}),J(t)?ao(t):An(t.kind,t.id),ro(t.kind,t.file,e)}function im(t,{version:e,text:n}){if(n===ot(t.kind.written(t.now)))return mr(t,t.now,e);let o=n!==null&&t.unanswered.includes(n);if(y(t,{unanswered:[]}),o)return y(t,{version:e,saved:void 0,theirs:void 0});let i=J(t)||t.theirs?void 0:$t(n);i?Pb(t,i,e):rm(t,{version:e,text:n})}function Pb(t,e,n){vt("giving_way",{file:t}),y(t,{set_aside:t.now,is_taken:!0,now:e}),mr(t,e,n),q(`${t.file} was changed outside this page, and stands here as it is now.`),vt("gave_way",{file:t})}var sm=t=>y(t,{set_aside:void 0,is_taken:void 0});function rm(t,{version:e,text:n}){y(t,{theirs:{version:e,text:n}}),ao(t),q(n===null?`${t.file} was deleted outside this page. Save it again, or leave it deleted?`:`${t.file} was changed outside this page. Which version do you want to keep?`),vt("conflict",{file:t})}function am(t){if(!t.theirs)return;let e=$t(t.theirs.text);if(!e){let n=`what is in ${t.file} now is no ${t.kind.name}; keep what is on this page`;return y(t,{failed:n})}vt("giving_way",{file:t}),y(t,{set_aside:t.now,now:e}),mr(t,e,t.theirs.version),vt("gave_way",{file:t})}function lm(t){t.theirs&&(y(t,{version:t.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),ao(t),vt("unwritten",{file:t}))}var uo=({theirs:t})=>t?.text===null;function um(t){uo(t)&&(An(t.kind,t.id),y(t,{saved:t.now,theirs:void 0,failed:void 0}),q(`${t.file} stays deleted.`),vt("left_deleted",{file:t}))}function dm(t){if(!t.set_aside)return;let{set_aside:e,now:n}=t,o=t.is_taken;xt(t,e),y(t,{set_aside:o?void 0:n})}var cm=t=>(t.theirs??t).version;function pm(t,e){y(t,{id:e,file:e}),vt("renamed",{file:t,renamed:n=>n})}async function mm(t){let{version:e,text:n}=await Ot(t.file),o=$t(n);if(!o||t.theirs||e===t.version)return;let i=Tl(t.now,o);if(J(t))return y(t,{version:e,now:i(t.now),saved:o});y(t,{version:e,now:o,saved:o}),vt("renamed",{file:t,renamed:i})}var fm=t=>t.shipped||!t.file?[]:[[t.file,cm(t)]];async function Wl(t,e,n,o){let i=t.file,s=()=>cm(t)===e&&t.file===i;if(!s()||(await Ll(t),!s()))return!1;o(),await Bl();let a=await Ob(i,n);return await Ll(t),s()&&(im(t,a),J(t)&&!t.theirs&&vt("unwritten",{file:t})),!0}async function Ob(t,e){let n=await e(t);return n===null?{version:n,text:null}:Ot(t)}var Bl=()=>new Promise(t=>setTimeout(t,Tb));var Mb=400,Fb=2e3,Il=new WeakMap;function gm(t,e){clearTimeout(Il.get(t)),Il.set(t,window.setTimeout(()=>{je(t)},e))}var Dn=(t=l.run)=>gm(t,Mb),Cb=t=>t===l.run||t===l.order?.open;async function je(t=l.run){clearTimeout(Il.get(t));try{await Ie(t),J(t)&&!t.theirs&&Cb(t)&&Dn(t)}catch(e){if(!(e instanceof v))throw e;e.may_pass&&gm(t,Fb)}}async function dn(){for(let t of[l.run,l.order?.open])t?.file&&J(t)&&await je(t)}var hm=Promise.resolve(),El=0;function qe(){if(!El&&!Lb().length)return;++El;let t=hm.then(Wb).finally(()=>--El);return hm=t.catch(()=>{}),t}var Lb=()=>[...ct.map(t=>l.formulas[t]),...wt.map(t=>l.beside[t])].filter(t=>t!==void 0&&J(t)&&!t.theirs);async function Wb(){for(let t of ct){let e=l.formulas[t];!e||!J(e)||e.theirs||(e.shipped&&t!=="apart"&&await Bo(l.run),await Ie(e))}for(let t of wt){let e=l.beside[t];e&&J(e)&&!e.theirs&&await Ie(e)}}var cn=t=>ln(l.run.file,t);function Vt(t,e){let n=cn(t);return e?.some(o=>o.file===n)?n:t}function _m(t){let e=l.run.now,n=e.pour,o=e.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},s=Vt(String(n?.mould??""),l.files?.moulds);return{file:Fo("trial.run.json",l.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(e.name??""),sell:e.sell??"",...e.spoilage===void 0?{}:{spoilage:e.spoilage},pour:{mould:s,...i,formula:t,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:e.scales??{},...Bb(e)}}}function Bb(t){let e={};for(let n of["cut","pots","batch"])t[n]!==void 0&&(e[n]=t[n]);if(e.batch){let{whippings:n,...o}=e.batch;e.batch=o}return e}var Pn=({lines:t})=>Array.isArray(t)?t:[];function pn(t){let e=Pn(t);return e.length>0&&e.every(({run:n,pieces:o})=>n&&typeof o=="number")}var xe=new Map,qi=new Set,Eb={changed:{},unreadable:[]},Eo=()=>new Set([...ct.flatMap(t=>l.formulas[t]??[]),...wt.flatMap(t=>l.beside[t]??[])]);function Io(){let t=jb(),e=new Set([...Eo()].map(({file:o})=>o));for(let o of xe.keys())!t.has(o)&&!e.has(o)&&xe.delete(o);for(let o of qi)t.has(o)||qi.delete(o);let n=[...t].filter(o=>!xe.has(o));return n.length?Ib(n):void 0}async function Ib(t){for(let[e,n]of await $m(t))xe.has(e)||xe.set(e,n)}async function $m(t){let e=t.filter(o=>!qi.has(o)),n=e.length?await Ai(new Map(e.map(o=>[o,null]))):Eb;return Hl(n.unreadable),new Map(t.map(o=>[o,n.changed[o]??null]))}var jl=async t=>(await $m([t])).get(t)??null,ql=()=>new Map([...xe].filter(([t])=>!qi.has(t)));function jb(){let t=new Set,e=o=>{typeof o!="string"||!o||(t.add(cn(o)),o.includes("..")||t.add(o))},n=l.run.now;t.add(cn("studio.json")),e($(n,"/pour/mould")),e($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])e($(o,"/mould"));for(let o of["pour","pipe"])l.formulas[o]||e($(n,`/${o}/formula`));for(let{file:o,now:i}of Eo()){let s=i.own_fats;typeof s=="string"&&s&&t.add(zt(o)+s).add(s)}e($(l.beside.studio?.now,"/own_tips"));for(let o of qb())t.add(o);for(let o of wt)t.delete(l.beside[o]?.file??"");return t}function qb(){let{open:t}=l.order??{},e=new Set(t?Pn(t.now).map(({run:p})=>ln(t.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:s=[],tips:a=[]}=l.files??{},d=[...n,...o,...i,...s,...a].filter(({shipped:p})=>!p),c=-1;for(;c!==e.size;){c=e.size;for(let{file:p,used_by:m=[]}of d)m.some(_=>e.has(_))&&e.add(p)}return t&&e.size&&e.add(ln(t.file,"studio.json")),e.delete(l.run.file),e}function wm(t,{changed:e}){let n=Object.keys(e).filter(o=>xe.has(o)&&xe.get(o)===t.get(o));for(let o of n)xe.set(o,e[o]);return n}var Hl=t=>t.forEach(e=>qi.add(e));function bm(){return[...Eo()].flatMap(({file:t,version:e})=>{let n=xe.get(t)??e;return xe.delete(t),n===e?[]:[t]})}var ym=0,co=()=>ym;function Nl(t){++ym,h({is_old:!0,changed_beside:t})}var Hb=1e3,Nb=450,fr=!1,po=!1,Ul=0;function ut(){h({is_old:!0}),fr?po=!0:jo()}async function jo(){if(fr){po=!0;return}fr=!0,vm(!1);try{do po=!1,await Ub();while(po)}finally{fr=!1,vm(!0)}}async function xm(){let{run:t}=l,e={file:t.file,run:t.now},n=await pp(e)?.catch(()=>{});!n||t!==l.run||l.plan||Zp()||(h({plan:n,planned:e}),Fl(n))}var vm=t=>{document.documentElement.dataset.settled=String(t)};function km(){let{run:t}=l,{apart:e}=l.formulas,{file:n,now:o}=t;return()=>{let i=t===l.run&&(n===t.file||o===t.now);return e===l.formulas.apart&&(e!==void 0||i)}}async function Ub(){let t=km();try{let e=qe();e&&await e;let n=Io();n&&await n,t=km();let{apart:o}=l.formulas;if(un(o?"apart":"run"))return h({is_old:!0});let i=co(),s=o?_m(o.file):{file:l.run.file,run:l.run.now},a=await Js(s);if(window.clearTimeout(Ul),!t())return void(po=!0);h({plan:a,planned:s,complaint:void 0}),Fl(a);let d=i===co();h({is_old:po||!d}),d&&h({changed_beside:void 0})}catch(e){if(!(e instanceof v))throw e;if(!t())return void(po=!0);zb(e)}}function zb(t){h({is_old:!0}),window.clearTimeout(Ul);let e=()=>{h({complaint:t.complaint}),Gp(t.complaint)};l.complaint||!l.plan?e():Ul=window.setTimeout(e,Nb),t.may_pass&&window.setTimeout(ut,Hb)}var Tm=2e3,ee=t=>h({bench:{...l.bench,...t}}),Jb=()=>ee({acts:te()});addEventListener("storage",({key:t})=>{t===Wo()&&Jb()});function hr(){let{file:t}=l.run;!t||l.bench.run===t||(h({bench:{run:t,batches:[],complaints:[],acts:te()}}),mo().then(Kl))}function Rm(t){let{file:e}=l.run;Vp(t,e),l.bench.run===t&&ee({run:e,acts:te()}),l.bench.run===e&&mo()}function gr(){let{run:t,version:e}=l.bench;return e===void 0||t!==l.run.file?void 0:{run:t,version:e}}var Hi=0;async function mo(){let{run:t}=l.bench,e=Hi;try{let n=await Lp(t);if(t!==l.bench.run)return;if(e!==Hi)return await mo();Sm(n)}catch(n){if(!(n instanceof v))throw n;if(t!==l.bench.run)return;ee({failed:Q(n.complaint)}),Am(n)&&setTimeout(()=>l.bench.failed!==void 0&&void mo(),Tm)}}var Sm=({batches:t,version:e,complaints:n=[]})=>ee({batches:t,version:e,complaints:n.map(({line:o})=>o),failed:void 0}),Am=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e),qo=t=>l.bench.batches.find(e=>e.batch===t),Jl=t=>l.bench.acts.filter(({run:e,batch:n})=>e===l.bench.run&&n===t),Ho=t=>Jl(t).length>0;function fo(t,e){let n=Jl(t).find(i=>i.key===e),o=qo(t)?.ticks[e]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function Vl(t){let e=Jl(t).find(n=>n.reading!==void 0);return(e?e.reading:qo(t)?.weigh_cup)??""}function Dm(t,e,n){let{run:o}=l.bench,s=qo(t)!==void 0||!l.planned?void 0:ot(l.planned.run);Jp({run:o,batch:t,seen:e,text:s,...n}),ee({acts:te(),chosen:t,told:void 0}),Kl()}var Pm=(t,e,n,o)=>Dm(t,e,{key:n,done:o}),Om=(t,e,n)=>Dm(t,e,{reading:n||null}),zl=!1;async function Kl(){if(!zl){zl=!0;try{await navigator.locks.request(Wo(),Vb)}finally{zl=!1}te().length&&setTimeout(()=>{Kl()},Tm)}}async function Vb(){for(let t=Pl();t;t=Pl())if(!await Kb(t))return}async function Kb(t){let{id:e}=t;try{let n=await Qb(t);return++Hi,ar(o=>o.id===e),Gb(n,t.run),!0}catch(n){if(!(n instanceof v))throw n;return Am(n)?(ee({unsent:Q(n.complaint)}),!1):(await Yb(t,n),!0)}}function Qb({run:t,text:e,batch:n,seen:o,key:i,done:s,reading:a}){let d={run:t,text:e,batch:n,seen:o};return i!==void 0?Wp({...d,key:i,done:s??!1}):Bp({...d,reading:a??null})}function Gb(t,e){let n=te();if(e!==l.bench.run)return ee({acts:n,unsent:void 0});let i=[...l.bench.batches.filter(s=>s.batch!==t.batch),t].sort((s,a)=>s.batch-a.batch);ee({acts:n,batches:i,unsent:void 0})}async function Yb(t,{complaint:e}){++Hi,ar(o=>o.run===t.run&&o.batch===t.batch);let n=`Not taken: ${Q(e)}.`;ee({acts:te(),unsent:void 0,told:{batch:t.batch,words:n}}),q(n),ut(),await mo()}async function Ni(t){let{run:e}=l.bench;await Mm(t,async()=>{let n=await Ep(e,t);return ar(o=>o.run===e&&o.batch===t),n})}var Ql=t=>Mm(t,()=>Ip(l.bench.run,t));async function Mm(t,e){let{run:n}=l.bench;try{let o=await e();if(++Hi,n!==l.bench.run)return;Sm(o),ee({acts:te(),told:void 0,chosen:t})}catch(o){if(!(o instanceof v))throw o;ee({told:{batch:t,words:Q(o.complaint)}})}}var Fm=t=>ee({chosen:t,told:void 0}),Cm=()=>ee({told:void 0});var Zb=300,Xb=1200,_r="",Lm=0;function Ui(){let t={run:{file:l.run,now:l.run.now}};for(let e of ct){let n=l.formulas[e];n&&(t[e]={file:n,now:n.now})}for(let e of wt){let n=l.beside[e];n&&(t[e]={file:n,now:n.now})}return t}function ho(t=""){let e=performance.now();t&&t===_r&&e-Lm<=Xb&&l.past.length||Gl(Ui()),h({future:[]}),_r=t,Lm=e}var Gl=t=>h({past:[...l.past,t].slice(-Zb)});function No(t){Gl(Wm(Ui(),t,()=>t.saved??{}))}function Wm(t,e,n){let o=Object.entries(t).map(([i,s])=>s.file===e?[i,{file:e,now:n(s.now)}]:[i,s]);return Object.fromEntries(o)}function Yl(t,e){let n=o=>o.map(i=>Wm(i,t,e));h({past:n(l.past),future:n(l.future)})}function zi(){let t=l.past.at(-1);t&&(h({past:l.past.slice(0,-1),future:[...l.future,Ui()]}),Bm(t,"Undone"))}function Zl(){let t=l.future.at(-1);t&&(h({past:[...l.past,Ui()],future:l.future.slice(0,-1)}),Bm(t,"Redone"))}function Bm(t,e){_r="",h({typed:void 0});for(let n of[...wt,...ct,"run"])ty(n,t);q(e)}function ty(t,e){let n=e[t];if(lr(t))return ey(t,n);let o=t==="run"?n?.file===l.run:l.formulas[t]!==void 0;!n||!o||(t!=="run"&&Ee(t,n.file),n.file.now!==n.now&&xt(n.file,n.now))}function ey(t,e){e&&e.file===l.beside[t]&&e.file.now!==e.now&&xt(e.file,e.now)}var Uo=t=>t===l.run||ct.some(e=>l.formulas[e]===t)||wt.some(e=>l.beside[e]===t);ke("giving_way",({file:t})=>{Uo(t)&&(_r="",Gl(Ui()),h({typed:void 0}))});for(let t of["copied","renamed"])ke(t,({file:e,renamed:n})=>Yl(e,n));var ny=1200,Xl="",Em=0;function zo(t,e=""){let n=performance.now(),o=e&&e===Xl&&n-Em<=ny&&t.past.length;y(t,{past:o?t.past:[...t.past,t.open.now],future:[]}),[Xl,Em]=[e,n]}function $r(t){let e=t.past.at(-1);e&&(y(t,{past:t.past.slice(0,-1),future:[...t.future,t.open.now]}),Im(t,e,"Undone"))}function wr(t){let e=t.future.at(-1);e&&(y(t,{past:[...t.past,t.open.now],future:t.future.slice(0,-1)}),Im(t,e,"Redone"))}function Im({open:t},e,n){Xl="",h({typed:void 0}),xt(t,e),q(n)}function On(t){return t==="run"?l.run:t==="order"?l.order?.open:lr(t)?l.beside[t]:l.formulas[t]}var oy=t=>On(t)?.now,g=(t,e)=>$(oy(t),e),A=(t,e)=>String(g(t,e)??"");function tt(t,e){let n=g(t,e);return Array.isArray(n)?n:[]}function pt(t,e,n){let o=g(t,e)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function jm(t,e){t==="order"&&l.order?zo(l.order,e):ho(e===void 0?"":`${t} ${e}`)}function V(t,e,n){let o=On(t);!o||$(o.now,e)===n||(jm(t,e),xt(o,P(o.now,e,n)))}function qm(t,e){let n=On(t);n&&(jm(t),h({typed:void 0}),xt(n,e(n.now)))}function He(t){ho(),h({typed:void 0});for(let[e,n]of t){let o=On(e);o&&xt(o,n(o.now))}}var tu=(t,e)=>{let{[t]:n,...o}=l.beside;h({beside:e?{...o,[t]:e}:o})};function br(t){for(let e of wt)l.beside[e]===t&&tu(e,void 0)}async function iy(t,e){try{let n=await Ct(t,e);return J(n)&&No(n),n}catch(n){if(!(n instanceof v||n instanceof SyntaxError))throw n;return}}async function Mn(t,e,n){let o=l.beside[t];if(o?.file===n)return o;let i=await iy(e,n);return tu(t,i),i&&J(i)&&vt("unwritten",{file:i}),i?.theirs&&vt("conflict",{file:i}),i}var Nm=()=>cn("studio.json");async function Jo(t=!1){let e=Nm(),n=(l.files?.studios??[]).some(o=>o.file===e);l.beside.studio?.file!==e&&(n||t?await Mn("studio",Ei,e):tu("studio",void 0))}async function yr(){l.run.shipped&&await Bo(l.run);let t=Nm();await Mn("studio",Ei,t)||(await sy(t),await Mn("studio",Ei,t))}async function sy(t){try{await Do({file:t,version:null,text:ot({schema:"brimwright.studio/1"})})}catch(e){if(!(e instanceof v)||e.status!==409)throw e}ro(Ei,t)}var Hm=(t,e)=>zt(t.file)+e;async function ry(t){try{return $t((await Ot(t)).text)!==void 0}catch(e){if(!(e instanceof v))throw e;return!1}}async function vr(t){let e=l.formulas[t];if(!e)return;e.shipped&&await Bo(e);let n=String($(e.now,"/own_fats")??"");if(n){let a=Hm(e,n);return Mn("own_fats",Be,await ry(a)?a:n)}let o=(l.files?.fats??[]).find(a=>!a.shipped&&zt(a.file)===zt(e.file)),i={schema:"brimwright.fats/1",fats:[]},s=o?.file??await nu(Be,Hm(e,"my.fats.json"),i);return V(t,"/own_fats",Xt(s)),Mn("own_fats",Be,s)}async function eu(){l.run.shipped&&await Bo(l.run);let t="/pipe/beads/own_tips",n=String($(l.run.now,t)??"")||String($(l.beside.studio?.now,"/own_tips")??"");if(n)return Mn("own_tips",Sn,cn(n));let o=zt(l.run.file),i=(l.files?.tips??[]).find(d=>!d.shipped&&zt(d.file)===o),s={schema:"brimwright.tips/2",tips:[]},a=i?.file??await nu(Sn,`${o}my.tips.json`,s);return l.beside.studio?V("studio","/own_tips",Xt(a)):V("run",t,Xt(a)),Mn("own_tips",Sn,a)}async function Ji(t,e){await Mn(t===Be?"own_fats":"own_tips",t,e)&&h({held_open:e})}function Fn(){let{view:t,held_open:e,beside:n}=l,o=t==="fats"?n.own_fats:t==="tips"?n.own_tips:void 0;return o&&o.file===e?o:void 0}async function kr(t,e){let n=t===Be;await Ji(t,await nu(t,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[e]}:{schema:"brimwright.tips/2",tips:[e]}))}async function nu(t,e,n){let{file:o}=await ce({kind:t,name:e,text:ot(n)});return ro(t,o),o}function Um(t,e){let n=(i,s)=>String($(i,s)??"").endsWith(Xt(e));for(let i of ct)t===l.beside.own_fats&&n(l.formulas[i]?.now,"/own_fats")&&V(i,"/own_fats",t.file);let o="/pipe/beads/own_tips";t===l.beside.own_tips&&n(l.run.now,o)&&V("run",o,t.file)}var go=[],Vo=[],Vi=()=>go.at(-1),iu=()=>Vo.at(-1);function Tr(t){go=[...go,t],Vo=[],h({list_told:t.words}),q(t.words)}async function Jm(){let t=Vi();t&&(await t.undo(),go=go.slice(0,-1),Vo=[...Vo,t],h({list_told:""}),q("Undone"),await pe())}async function Vm(){let t=iu();t&&(await t.redo(),Vo=Vo.slice(0,-1),go=[...go,t],h({list_told:t.words}),q("Redone"),await pe())}async function pe(){let[t,e]=await Promise.all([zs(),zc()]);h({files:t,removed:e})}async function Km(t,e){let{$schema:n,...o}=JSON.parse((await Ot(e.file)).text),i=`${e.name||Ko(e.file)}, copy`,s={...o,...t.called&&{[t.called]:i},...t.has_id?{id:crypto.randomUUID()}:{}},a=t.called?t.new_name(lo(t,s)):ve(i,su(e.file)),{file:d}=await ce({kind:t,name:a,text:ot(s),from:e.file});await pe();let c="";return Tr({words:`Copied ${e.name||e.file}.`,undo:async()=>c=await xr(d,!0),redo:()=>Si(c)}),d}var su=t=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(t)?.[0]??"",Ko=t=>Xt(t).slice(0,-su(t).length||void 0),Qm=(t,e)=>zt(t)+e+su(t),zm=t=>[l.run,l.order?.open,...ct.map(e=>l.formulas[e]),...wt.map(e=>l.beside[e])].find(e=>e?.file===t);async function Gm(t,e,n){let o={name:e.name,note:e.note,stem:Ko(e.file)};await ou(t,e.file,n),await pe();let i=Qm(e.file,n.stem);Tr({words:`Changed ${n.name||i}.`,undo:()=>ou(t,i,o),redo:()=>ou(t,e.file,n)})}async function ou(t,e,{name:n,note:o,stem:i}){let s=zm(e),a=s??await Ct(t,e),{note:d,...c}=a.now,p={...c,...o&&{note:o}},m=t.called?P(p,`/${t.called}`,n||void 0):p;if(ot(m)!==ot(a.now)&&(s&&Uo(s)&&ho(),s===l.order?.open&&l.order&&zo(l.order),xt(a,m),await Ie(a),a.theirs))throw new Error(`${e} was changed outside this page just now. Look at it again.`);let _=Qm(e,i);if(_===e)return;let{renamed_in:w}=await Nc(e,_);s&&pm(s,_);for(let b of w){let k=zm(b);k&&await mm(k)}}async function xr(t,e){let{removed:n}=await Uc(t,e);l.run.file===t&&Lo(),l.order?.open.file===t&&h({order:void 0});let o=wt.map(i=>l.beside[i]).find(i=>i?.file===t);return o&&br(o),n}async function Ym(t,e){let n=await xr(t.file,e);await pe(),Tr({words:`Removed ${t.name||t.file}.`,undo:()=>Si(n),redo:async()=>n=await xr(t.file,!0)})}async function Zm({removed:t,file:e,name:n}){await Si(t),await pe();let o="";Tr({words:`${n||e} is back.`,undo:async()=>o=await xr(e,!0),redo:()=>Si(o)})}async function Xm({removed:t,file:e,name:n}){h({removed:await Jc(t),list_told:""}),q(`${n||e} is deleted for good.`)}async function Cn(){for(let t of["pour","pipe"]){let e=$(l.run.now,`/${t}/formula`);typeof e=="string"&&e?await ay(t,Vt(e,l.files?.formulas)):Ee(t,void 0)}}async function ay(t,e){if(l.formulas[t]?.file===e)return;let n=ct.map(o=>l.formulas[o]).find(o=>o?.file===e);if(Ee(t,n),!n)try{let o=await ru(e);Ee(t,o),J(o)&&vt("unwritten",{file:o}),o.theirs&&vt("conflict",{file:o})}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o}}async function ru(t){let e=await Ct(Co,t);return J(e)&&No(e),e}var Ki=(t,e=0)=>t.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(e-i).toFixed(2)}`).join("L")}Z`).join("");function Qo(t){let e=new DataView(t).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(t,20,e))),o=s=>20+e+8+(n.bufferViews[n.accessors[s].bufferView].byteOffset??0),i=s=>n.accessors[s].count;return n.meshes.map(({name:s,primitives:[{attributes:a,indices:d,material:c}]})=>({name:s,positions:new Float32Array(t,o(a.POSITION),i(a.POSITION)*3),indices:new Uint32Array(t,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function ef(t,e,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],a=[],{positions:d,indices:c}=t;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let w=3*c[p+_],b=3*c[p+(_+1)%3],k=d[w+i]-e,U=d[b+i]-e;if(k>0==U>0)continue;let Pt=k/(k-U),Zn=[1e3*(d[w]+Pt*(d[b]-d[w])),1e3*s*(d[w+o]+Pt*(d[b+o]-d[w+o]))];k>0?m.push(Zn):m.unshift(Zn)}m.length===2&&a.push([m[0],m[1]])}return a}function nf(t){let e=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of t){let s=e(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of t){let s=[],a=n.get(e(i[0]))?.shift();for(;a;)s.push(a[0]),a=n.get(e(a[1]))?.shift();s.length>2&&o.push(s)}return o}function Qi(t){let e=t.positions,[n,o,i,s,a,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<e.length;p+=3)i=Math.min(i,e[p]),s=Math.max(s,e[p]),a=Math.min(a,e[p+1]),d=Math.max(d,e[p+1]),n=Math.min(n,e[p+2]),o=Math.max(o,e[p+2]);let c=n+(o-n)*.50137;return{loops:nf(ef(t,c)),left:1e3*i,right:1e3*s,floor:1e3*a,brim:1e3*d,cut_y:-1e3*c}}function of(t,e){let[n,o]=[e.floor/1e3,(e.brim-e.floor)/1e3];return[.999,.50137].map(s=>nf(ef(t,n+s*o,"level"))).reduce((s,a)=>tf(a)>1.001*tf(s)?a:s)}function tf(t){let[e,n]=[1/0,-1/0];for(let o of t)for(let[i]of o)[e,n]=[Math.min(e,i),Math.max(n,i)];return Math.max(0,n-e)}function au(t,e){let[n,o]=[1/0,-1/0];for(let i of t.loops)i.forEach(([s,a],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(a,p)>e||Math.max(a,p)<e))for(let m of a===p?[s,c]:[s+(e-a)/(p-a)*(c-s)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[t.left,t.right]}var sf=40,ly=2e3,lu=0;async function rf(t){let e=await Le({kind:"glb",gauge:t}),n=Qo(await e.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Go(t){let[e,n]=await Promise.all([xn(t),rf(t)]),o=Qi(n);return{gauge:e,outline:o,above:of(n,o)}}async function uy(t){let{pockets:e}=await xn(t),n=e[0].brim_mm-e[0].floor_mm-.001,o=Array.from({length:sf},(i,s)=>`${(n*(s+1)/sf).toFixed(4)} mm`);return xn({...t,depth:o})}function Te(){dy()}async function dy(){let t=$(l.run.now,"/pour/mould");if(typeof t!="string")return;let e=++lu,n=Vt(t,l.files?.moulds);try{let[o,i]=await Promise.all([uy({file:n}),rf({file:n})]);e===lu&&h({measured:{mould:n,gauge:o,outline:Qi(i)},measuring_failed:void 0})}catch(o){if(e!==lu)return;if(!(o instanceof v))throw o;h({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(Te,ly)}}var Gi=()=>h({own_fats:{}});function Ln(t){let e=Yi(t);return Array.isArray(e)?[...e,...l.fats]:l.fats}function Yi(t){let e=l.formulas[t],n=$(e?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||e===void 0)return;let o=l.beside.own_fats;if(o&&[zt(e.file)+n,n].includes(o.file))return lf(o.now)??"none";let i=`${e.file}
${n}`,s=l.own_fats[i];return s||(af(i,"waiting"),cy(n,e.file).then(a=>af(i,a)),"waiting")}var af=(t,e)=>h({own_fats:{...l.own_fats,[t]:e}});async function cy(t,e){for(let n of new Set([zt(e)+t,t])){let o=lf(await py(n));if(o)return o}return"none"}var lf=t=>Array.isArray(t?.fats)?t.fats.map(my):void 0;async function py(t){try{return $t((await Ot(t)).text)}catch{return}}var my=({id:t,name:e,saponification_value:n})=>({id:String(t??""),name:String(e??t??""),own:fy(n)});function fy(t){if(t===null||typeof t!="object")return String(t??"");let{low:e,high:n}=t;return`${String(e)} to ${String(n)}`}var Yo=[],Zi;function Rr(){Yo.length=0;for(let{file:t,shipped:e}of l.files?.moulds??[])e||Yo.push(t);Zi===void 0&&df()}function uf(t){let e=l.own_moulds[t];return!e&&t!==Zi&&!Yo.includes(t)&&Yo.push(t),Zi===void 0&&Yo.length&&df(),e}async function df(){for(;(Zi=Yo.shift())!==void 0;){let t=Zi,e=await hy(t);h({own_moulds:{...l.own_moulds,[t]:e}})}}async function hy(t){try{let{pockets:e}=await xn({file:t});return{brimful_ml:e[0].brimful_ml,cavities:e.length}}catch(e){if(!(e instanceof v))throw e;let{field:n,problem:o,remedy:i}=e.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var mf=()=>h({own_tips:{}}),uu=!1;function Xi(){return!l.tips&&!uu&&(uu=!0,np().then(t=>h({tips:t}),ff).finally(()=>uu=!1)),l.tips??[]}function du(t){let e=cn(t),n=l.beside.own_tips;if(n?.file===e)return pf(n.now);let o=l.own_tips[e];return o||!t||l.typed?o??[]:(cf(e,[]),Ot(e).then(({text:i})=>cf(e,pf($t(i))),ff),[])}var cf=(t,e)=>h({own_tips:{...l.own_tips,[t]:e}});function pf(t){let e=t?.tips;return(Array.isArray(e)?e:[]).map(n=>({name:String(n.name)}))}function ff(t){if(!(t instanceof v))throw t}var Sr=300,gy=5e3,wf=2e3,_y=500,hf=!1,ts=new AbortController,bf=()=>ts.abort(),yf=()=>document.visibilityState==="hidden";function Ar(){if(hf)return;hf=!0;let t=async()=>{ts=new AbortController;let e=await $y(ts).then(()=>yf()?gy:Sr,()=>ts.signal.aborted?Sr:wf);await gf(Sr),await gf(e-Sr,ts.signal),t()};t()}var gf=(t,e)=>new Promise(n=>{if(t<=0||e?.aborted)return n();setTimeout(n,t),e?.addEventListener("abort",()=>n())}),vf=()=>[l.run,...l.order?[l.order.open]:[],...l.mould?[l.mould.open]:[],...Eo()],kf=()=>new Map(vf().flatMap(fm)),_f=()=>JSON.stringify([[...kf().keys()],[...ql().keys()],gr()?.run??null]);async function $y(t){let[e]=bm();e!==void 0&&await $f(e);let[n,o]=[kf(),ql()],i=new Map([...o,...n]),s=[...o].every(([c,p])=>i.get(c)===p),a=s&&!yf()?await wy(i,t):await Ai(i,gr());a.bench!==void 0&&await mo(),Hl(a.unreadable),await by(n,a);let[d]=wm(o,s?a:await Ai(o));d!==void 0&&await $f(d)}async function wy(t,e){let[n,o]=[_f(),Date.now()],i=window.setInterval(()=>{(_f()!==n||Date.now()-o>Vc+wf)&&e.abort()},_y);try{return await Kc(t,gr(),e.signal)}finally{window.clearInterval(i)}}async function by(t,{changed:e}){let n=Eo();for(let o of vf()){let i=t.get(o.file);i===void 0||!(o.file in e)||(n.has(o)?await yy(o,i):await Wl(o,i,jl,()=>{}))}}async function yy(t,e){await Wl(t,e,jl,()=>Nl(t.file))&&(Gi(),ut())}async function $f(t){Nl(t),await Bl(),Gi(),mf(),h({measured:void 0}),Te(),Rr(),await Promise.all([Cn(),Jo(!0)]),ut()}async function Tf(t){let e=await dp();h({files:e});let n=up(e,t.run);try{await Ne(n,n===t.run||!t.run?t.view:void 0)}catch(o){let i=o instanceof v?o.message:`The run opened last can no longer be read: ${String(o)}`;h({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Rf(){let[t,e]=await Promise.all([tp(),ep()]);h({fats:t,catalogue:e})}var vy=()=>new Promise(t=>setTimeout(t,400)),cu={};async function Ne(t,e="weigh"){if(!t)return h({view:"runs"});let n=cu={name:t},o=l.view;l.run.file&&J(l.run)&&await je();let i=await Ct(io,t);if(cu!==n||(Lo(i),hr(),await Promise.race([xm(),vy()]),l.run!==i))return;l.view===o&&cu===n&&h({view:e}),localStorage.setItem("run",i.file),J(i)&&(No(i),Dn());let s=jo().finally(Te);await Promise.all([s,Cn(),Jo()]),Ar()}var xf=()=>(l.files?.studios??[]).some(t=>t.file==="studio.json");async function Dr(t){let e=l.run.now,n=e.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:t.name,sell:t.sell,pour:{mould:t.mould,formula:t.formula}};t.slice&&(o.cut={bar:{thickness:t.slice},...xf()?{}:{kerf:""}}),xf()||(o.note=`Losses, scales and spoilage were taken over from "${String(e.name)}": check them.`,e.spoilage!==void 0&&(o.spoilage=e.spoilage),o.losses={pour:n.pour??{}},o.scales=e.scales??{},e.money&&!l.run.shipped&&(o.money=e.money));let{file:i}=await ce({kind:io,name:ve(t.name,".run.json"),text:ot(o)});rt("set-up pour"),t.slice&&rt("set-up cut"),await Ne(i,"set-up")}var ky="examples/plain_bars.run.json";function Kt(t){Gi();let e=sn(l.view)?l.view:l.came_from;h({view:"formula",came_from:e,formula_of:t,picking:void 0,typed:void 0})}async function es(t){let e=["pour","pipe"].find(n=>l.run.file&&l.formulas[n]?.file===t);if(e)return Kt(e);l.run.file||await Ne(ky,"reading"),await xy(t)}async function xy(t){let e={past:l.past,future:l.future};h({run_steps:e,past:[],future:[]});try{Ee("apart",await ru(t))}catch(n){throw h({...e,run_steps:void 0}),n}h({plan:void 0,complaint:void 0}),Kt("apart"),jo()}async function Ty(){let t=l.formulas.apart!==void 0;return await Pr()?(h({view:t?"weigh":l.came_from,typed:void 0}),!0):!1}async function Pr(){return l.formulas.apart?await Ry()?(jo(),!0):!1:!0}async function Ry(){try{await qe()}catch(e){if(!(e instanceof v))throw e;return h({complaint:e.complaint}),!1}if(l.formulas.apart?.theirs)return q("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;Ee("apart",void 0);let t={...l.dangers,apart:[]};return h({dangers:t,...l.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function Sf(t){let e=l.view==="formula"&&l.formulas[l.formula_of]===t,n=l.formulas.apart===t;for(let o of["pour","pipe"])l.formulas[o]===t&&Ee(o,void 0);n&&await Pr(),e&&h({view:n?"formulas":"set-up",typed:void 0})}async function pu(t){let{file:e}=l.formulas.apart;await Ty()&&V("run",`/${t}/formula`,e)}var Sy=t=>({schema:"brimwright.formula/2",name:t,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Af=t=>Pf(Sy(t));async function Df(t,e){let{$schema:n,...o}=JSON.parse((await Ot(t)).text);await Pf({...o,name:e},t)}async function Pf(t,e){let n=ve(String(t.name),".formula.json"),{file:o}=await ce({kind:Co,name:n,text:ot(t),from:e});await es(o)}var Ay=30,Of=0,mu=!1,fu=!1;function hu(t,e,n){let o=e==="mesh"?l.mesh:void 0;h({mould:{way:e,title:n,open:t,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),_u()}var Ue=()=>h({mould:void 0,mesh:void 0}),Zo=(t,e,n)=>hu(lo(Jt,t),e,n);async function Mf(t,e){let n=await Ct(Jt,t,e?crypto.randomUUID():t),o=String(n.now.name??t);e&&y(n,{now:{...n.now,name:""}}),hu(n,"form",e?`A copy of ${o}`:`Change ${o}`)}async function Ff({id:t,file:e,text:n}){let o=e?await Ct(Jt,e,t):lo(Jt,JSON.parse(n),t);hu(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var et=()=>l.mould,I=()=>et().open.now;function kt(t,e){zo(et(),t),xt(et().open,P(I(),t,e))}var Cf=()=>$r(et()),Lf=()=>wr(et()),Dy=["name","note","owned","unmould_after"];function gu(t){let e=I(),n=Object.keys({...t,...e}).filter(a=>t?.[a]!==e[a]);(!t||n.some(a=>!Dy.includes(a)))&&y(et(),{is_old:!0});let i=n.some(a=>et().complaint?.field===`/${a}`),s=n.some(a=>!["name","note"].includes(a));(et().is_old||i||s)&&_u()}function _u(){clearTimeout(Of),Of=window.setTimeout(()=>{Py()},Ay)}async function Py(){if(mu)return void(fu=!0);let{mould:t}=l;if(!t)return;let e=t.open.now;if(!(!ye(e,"shape")&&!ye(e,"mesh"))){if(Bi(e).length)return y(t,{complaint:void 0});mu=!0;try{let n=Jt.written(e),o={file:t.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Go(o);t.open.now===e&&y(t,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof v))throw n;t.open.now===e&&$u(n)}finally{mu=!1,fu&&_u(),fu=!1}}}function $u(t){let{field:e,problem:n,remedy:o,keep:i,entry:s}=t.complaint,a=e?`${n}; ${o}`:t.message;y(et(),{complaint:{field:sr(I(),e),line:a,keep:i&&{...i,at:sr(I(),i.at)},about:s===void 0?void 0:sr(I(),`${e}/${s}`)}})}var Wf={};async function ns(t){let e=Wf={name:t},n=l.view;if(l.order?.open.file!==t){l.order&&J(l.order.open)&&await je(l.order.open);let o=await Ct(so,t);if(Wf!==e)return;let i=J(o)?[o.saved??{}]:[];h({order:{open:o,past:i,future:[],times:""},typed:void 0}),J(o)&&Dn(o)}l.view===n&&h({view:"order",typed:void 0}),Ar()}function Bf(){h({order:void 0,...l.view==="order"?{view:"orders"}:{}})}async function Ef(t){let e={schema:"brimwright.order/1",id:crypto.randomUUID(),for:t,lines:[]},n=so.new_name(lo(so,e)),{file:o}=await ce({kind:so,name:n,text:ot(e)});await ns(o)}var Lt=()=>l.order,If=()=>$r(Lt()),jf=()=>wr(Lt());var Or=t=>Object.values(l.formulas).includes(t),Xo=t=>Object.values(l.beside).includes(t),qf=t=>`${String($(t,"/pour/formula"))}
${String($(t,"/pipe/formula"))}`;function Oy(t,e){$(t,"/pour/mould")!==$(e,"/pour/mould")&&Te(),qf(t)!==qf(e)&&Cn(),ut(),Dn()}var My=ut;function Fy(t,e){for(let n of["pour","pipe"]){if(l.formulas[n]!==t)continue;let o=`/${n}/formula`,i=s=>String($(s,o)??"").endsWith(Xt(e))?P(s,o,t.file):s;Yl(l.run,i),i(l.run.now)!==l.run.now&&xt(l.run,i(l.run.now))}}async function Cy(t){t===l.run?(Lo(),localStorage.removeItem("run"),h({view:"runs"})):t===l.mould?.open?Ue():t===l.order?.open?Bf():Xo(t)?br(t):await Sf(t),await pe(),l.run.file&&ut()}function Hf(){ke("edited",({file:t,before:e})=>{t===l.run?Oy(e,t.now):Or(t)||Xo(t)?My():t===l.mould?.open?gu(e):t===l.order?.open&&Dn(t)}),ke("gave_way",({file:t})=>{if(t===l.mould?.open)return gu();t!==l.order?.open&&(t===l.run&&(Te(),Cn().then(ut)),ut())}),ke("left_deleted",({file:t})=>{Cy(t)}),ke("unwritten",({file:t})=>{t===l.run||t===l.order?.open?je(t):(Or(t)||Xo(t))&&ut()}),ke("conflict",({file:t})=>{(Or(t)||Xo(t))&&h({is_old:!0})}),ke("renamed",({file:t})=>{Xo(t)&&l.held_open!==void 0&&h({held_open:t.file}),t===l.run&&(localStorage.setItem("run",t.file),Te(),Cn()),ut()}),ke("copied",({file:t,from:e})=>{Or(t)&&Fy(t,e),Xo(t)&&Um(t,e),l.held_open===e&&h({held_open:t.file}),t===l.run&&(Rm(e),localStorage.setItem("run",t.file),Jo().then(ut))})}var Re=r`<span aria-hidden="true">⚠</span> Danger`;function os(t,e="",n){let o=Wn(t,n);return o.length?r`<div class="dangers" id=${e||u}>
    ${o.map(i=>r`<p class="danger"><strong>${Re}</strong> ${i}</p>`)}
  </div>`:u}function Wn(t,e){let n=t==="pour"?"pipe":"pour";return l.dangers[t==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>t==="apart"||o.batter!==n).filter(o=>e===void 0||o.batch_pieces===void 0||o.batch_pieces===e).map(o=>o.text)}function Nf(){let t=ue(l.view)||l.view==="order"||ji()==="apart",e=l.dangers.run.map(({text:n})=>({from:t?`In the run "${String(l.run.now.name??l.run.file)}": `:"",text:n}));return[...l.dangers.apart.map(({text:n})=>({from:"",text:n})),...e]}var Uf=()=>Nf().length>0;function zf(){let t=Nf(),e=By();return!t.length&&!e?u:r`<section class="foremost" aria-label="Danger, and figures from before">
    ${t.length?r`<div role="alert" class="dangers">
            ${t.map(({from:n,text:o})=>r`<p class="danger"><strong>${Re}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${e?r`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${e}</p>
            ${Ly()?r`<button type="button" @click=${Wy}>To the question</button>`:u}
          </div>`:u}
  </section>`}var Ly=()=>un(ji())!==void 0&&!ue(l.view);function Wy(){let t=document.querySelector(".banner h2");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}),t.scrollIntoView({block:"start"}))}function By(){if(!l.run.file||l.view==="reading")return"";let t=un(ji());return t&&uo(t)?`${t.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`:t?`${t.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:l.is_old&&l.changed_beside?`${l.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}var mn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Mr=t=>(...e)=>({_$litDirective$:t,values:e}),ti=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,o){this._$Ct=e,this._$AM=n,this._$Ci=o}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}};var{I:Ey}=Op,Jf=t=>t;var Kf=t=>t.strings===void 0,Vf=()=>document.createComment(""),ei=(t,e,n)=>{let o=t._$AA.parentNode,i=e===void 0?t._$AB:e._$AA;if(n===void 0){let s=o.insertBefore(Vf(),i),a=o.insertBefore(Vf(),i);n=new Ey(s,a,t,t.options)}else{let s=n._$AB.nextSibling,a=n._$AM,d=a!==t;if(d){let c;n._$AQ?.(t),n._$AM=t,n._$AP!==void 0&&(c=t._$AU)!==a._$AU&&n._$AP(c)}if(s!==i||d){let c=n._$AA;for(;c!==s;){let p=Jf(c).nextSibling;Jf(o).insertBefore(c,i),c=p}}}return n},Bn=(t,e,n=t)=>(t._$AI(e,n),t),Iy={},Fr=(t,e=Iy)=>t._$AH=e,Qf=t=>t._$AH,Cr=t=>{t._$AR(),t._$AA.remove()};var F=Mr(class extends ti{constructor(t){if(super(t),t.type!==mn.PROPERTY&&t.type!==mn.ATTRIBUTE&&t.type!==mn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!Kf(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[e]){if(e===Mt||e===u)return e;let n=t.element,o=t.name;if(t.type===mn.PROPERTY){if(e===n[o])return Mt}else if(t.type===mn.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(o))return Mt}else if(t.type===mn.ATTRIBUTE&&n.getAttribute(o)===e+"")return Mt;return Fr(t),e}});var Ht=t=>t.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function fn(t,e){let n=Ht(e).split(/\s+/).filter(Boolean),o=i=>n.every(s=>Ht(i).includes(s));return o(`${t.name} ${t.id.replaceAll("_"," ")}`)?t.name:"own"in t?void 0:[...t.also_called,t.inci].find(o)}function Lr(t,e){let n=Ht(t).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!e.some(s=>s.id===i))return i}}var Br=28.349523125,Xf=25.4,jy=29.5735295625;function ze(t,e){return t.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1")}function S(t,e){return qy(ze(t,e))}var qy=t=>t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function me(t){let e=[1,2,3].find(n=>Number(t.toFixed(n))!==0);return e!==void 0?`${ze(t,e)} %`:wu(t)?"just below 0 %":"0.0 %"}var wu=t=>t<0||Object.is(t,-0),th=t=>Math.abs(t-Math.round(t))<1e-6;function Gf(t){return t?[0,1,2,3].find(e=>th(t*10**e))??3:0}function Yf(t){return Math.max(0,Math.ceil(-Math.log10(t)-1e-9))}function Hy(t){return[0,1,2].find(e=>t.every(n=>th(n*10**e)))??3}function Er(t,e,n){return t==="metric"?[e,""]:t==="us"?[n,""]:[e,n]}function Wt(t,e){let n=s=>t[`${e}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-Hy([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var eh=.001;function Wr(t,e,n,o,i=1e-9){let s=10**n;return ze(o==="nearest"?t/e:Math.floor((t+i)/e*s)/s,n)}var Zf=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function Ny(t){if(!Zf.some(e=>Math.abs(e*10-t)<1e-9||Math.abs(e-t)<1e-9))return Zf.find(e=>Math.abs(e*Br-t)<.6*eh)}function mt(t,e,n="nearest"){let o=e.scale_step_g||.1,i=Ny(o),s=Math.min(.6*eh,o/2),a=i?Wr(e.g,1,Yf(o),n):Wr(e.g,1,Gf(o),n,s),d=i?Wr(e.g,Br,Gf(i),n,s):Wr(e.g,Br,Yf(o/Br),n),[c,p]=[`${e.g_text??a} g`,`${e.oz_text??d} oz`];return(e.reads?e.reads==="oz":i!==void 0)&&t==="both"?[p,c]:Er(t,c,p)}var E=(t,e,n=1,o="nearest")=>mt(t,{g:e,scale_step_g:10**-n},o);function St(t,e,n=1){return Er(t,`${ze(e,n)} ml`,`${ze(e/jy,2)} US fl oz`)}function Tt(t,e){return Er(t,`${S(e,1)} mm`,Uy(e))}function Uy(t){let e=Math.round(Math.abs(t)/Xf*32),n=t<0&&e?"-":"",o=e%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(e/32),a=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",a].filter(Boolean).join(" ")} in`}var bu=([t])=>t,O=([t,e])=>e?`${t} (${e})`:t;function nh(t,e){return Er(t,`${ze(e,0)} \xB0C`,`${ze(e*1.8+32,0)} \xB0F`)}function Se(t){let e=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(t??""));if(!e)return;let n=Number(e[1]??0)+Number(e[2].replace(",","."))/Number(e[3]??1),o={mm:1,cm:10,m:1e3}[e[4]]??Xf;return n*o}function Je(t){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(t??""))?.[1]?.trim()??""}var Ve=t=>/^\s*[+-]?\d[\d.,/\s]*$/.test(t);function bt(t){let e=new Date(/^\d{4}-\d\d-\d\d$/.test(t)?`${t}T12:00`:t);return Number.isNaN(e.getTime())?t:e.toLocaleDateString("en-GB",{dateStyle:"medium"})}function At(t){return`${new Date(`${t}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${bt(t)}`}var oh=t=>new Date(`${t}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),is=t=>t.replaceAll(/\d{4}-\d\d-\d\d/g,bt);function Ir(t){let e=Math.ceil(t),[n,o]=[Math.floor(e/60),e%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function En(t){let e=Math.round(t/60);return t>=60&&t%60===0&&e<90?`${e} min`:t<90?`${Math.round(t)} s`:e<90?`${e} min`:`${Math.floor(e/60)} h ${e%60} min`}function rh(t){let e=Se(t.round?.radius);if(e)return ih(e,R`<circle class="plain" r=${e} />`);let n=zy(t);if(!n)return u;let o=Math.max(...n.map(([i,s])=>Math.hypot(i,s)));return o>0?ih(o,R`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):u}var ih=(t,e)=>r`<svg class="tip" viewBox="${-1.1*t} ${-1.1*t} ${2.2*t} ${2.2*t}" aria-hidden="true">
    ${e}
  </svg>`;function zy({star:t,outline:e}){if(t&&typeof t=="object"&&!Array.isArray(t))return Jy(t);if(!Array.isArray(e))return;let n=e.map(o=>[sh(o,"x"),-sh(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function sh(t,e){let n=String(t[e]??"").trim();return(n.startsWith("-")?-1:1)*(Se(n.replace(/^-/,""))??NaN)}function Jy({points:t,outer_radius:e,inner_radius:n}){let[o,i]=[Se(e),Se(n)];if(!(!o||!i||typeof t!="number"||t<3||t>60))return Array.from({length:2*t},(s,a)=>{let d=Math.PI*a/t,c=a%2?i:o;return[c*Math.sin(d),-c*Math.cos(d)]})}var yu=!1;function ah(t){let{plan:e,explanation:n}=l,o=n?.of!==e;return o&&!yu&&Ky(),{workings:Vy(n?.workings,t),complaint:n?.complaint,is_old:o}}function Vy(t,e){let n=t?.get(e);return n?[n]:[...t?.values()??[]].filter(({of:o})=>o.startsWith(`${e}.`))}async function Ky(){let{plan:t,planned:e}=l;if(!(!t||!e)){yu=!0;try{let{how:n}=await Qc(e);h({explanation:{of:t,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof v))throw n;h({explanation:{of:t,workings:new Map,complaint:n.message}})}finally{yu=!1}}}var lh=R`<path class="wall" d="M30 10l8 52h44l8-52" />`,vu={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:R`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${lh}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:R`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:R`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${lh}<path class="measure" d="M20 10h80" />`}};var ku=t=>`term ${t}`;function hn(t){return r`<button
    type="button"
    class="ask-term"
    aria-expanded=${l.open.has(ku(t))?"true":"false"}
    aria-label="What ${vu[t].name} means"
    @click=${()=>qt("open",ku(t))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function Ae(t){if(!l.open.has(ku(t)))return u;let{name:e,words:n,drawing:o}=vu[t];return r`<span class="term-words" role="note"
    >${o?r`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${e}</b>: ${n}</span
    ></span
  >`}var In=t=>r`<span class="term">${hn(t)}${Ae(t)}</span>`;function M({key:t,label:e,shown:n,of:o,working:i,size:s="plain",note:a,term:d}){let c=l.open.has(t),p=`sum-${t.replaceAll(/[^\w]/g,"-")}`;return r`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>qt("open",t)}
    >
      <span class="name">${e}${a?r`<small>${a}</small>`:u}</span>
      <span class="value ${s==="weigh"?"large":""} ${l.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?r` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?r`${hn(d)}${Ae(d)}`:u}
    ${c?r`<div class="sum" id=${p}>${i?jr(i):xu(o)}</div>`:u}
  </div>`}var _o=(t,e,n)=>M({key:t,label:e,shown:["",""],of:n});function xu(t){let{workings:e,complaint:n,is_old:o}=ah(t);return e.length?r`<div class=${o?"old":""}>${e.map(jr)}</div>`:o?r`<p class="old" role="status">Asking how it is calculated ...</p>`:r`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function jr({formula:t,with:e,sum:n,rounded:o,comes_to:i,sources:s}){let a=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return r`<p class="formula">${t}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${e.map(({name:d,value:c,from:p})=>r`<tr>
              <th scope="row">${d}</th>
              <td>${c}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${a?r`<p class="comes-to">${a}${o?`, rounded ${o}`:""}</p>`:u}
    ${s.length?r`<p class="sources">From: ${s.join("; ")}.</p>`:u}`}var $o,ss=[],gn=()=>$o!==void 0;function ne(t,e,n,o){if(!$o||$o.some(s=>s.id===n))return;let i=ss.flatMap(({part:s})=>s??[]);$o.push({of:t,at:e,id:n,label:o,part:i.at(-1)??"",folds:ss.flatMap(({fold:s})=>s??[])})}function fe(t,e){ss.push(t);try{return e()}finally{ss.pop()}}var uh=()=>{},dh=t=>{uh=t},qr,Qy=()=>[l.run.now,...Object.values(l.formulas).map(t=>t.now),...Object.values(l.beside).map(t=>t.now),l.formulas.apart,l.plan,l.fats,l.files];function ni(){if(gn())return[];let t=Qy();return qr?.of.length===t.length&&t.every((n,o)=>n===qr.of[o])||(qr={of:t,wanted:Gy()}),qr.wanted}function Gy(){$o=[],ss=[];try{return uh(),$o}finally{$o=void 0}}function ch(t){l.touched.has(t)||h({touched:new Set(l.touched).add(t)})}function ph(t,e){if(l.has_asked)return!1;let n=ni().filter(o=>o.of===t&&(o.at===e||o.at.startsWith(`${e}/`)));return n.length>0&&n.every(o=>!l.touched.has(o.id))}var z=(t,e)=>`f-${t}${e.replaceAll(/[^\w]/g,"-")}`;function Hr(t){if(t==="order")return l.order?.quoted?.complaint??l.order?.days?.complaint;let e=(n,o)=>o===l.plan?n?.complaint:void 0;return l.complaint??e(l.quoted,l.quoted?.of)??e(l.run_days,l.run_days?.of[0])}function Bt(t,e){let n=Hr(t);if(!(!n||n.field!==e&&!n.field.startsWith(`${e}/`)))return he(t)&&!ph(t,n.field)?Q(n):void 0}function yt(t,e){return Hr(t)?.field===e?Bt(t,e):void 0}function he(t){let e=Hr(t),n=On(t)?.file;return!e||n===void 0?!1:e.file===""||e.file===n||e.file.endsWith(`/${n}`)}function Yy(t,e){let n=e.slice(0,e.lastIndexOf("/"));return Object.keys(g(t,n)??{}).length>1?e:n}function Ke(){let t=Hr();if(t)for(let e of["run",...ct,...wt])for(let n=t.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Bt(e,n)&&document.getElementById(z(e,n));if(o)return o}}function Zy(t,e){let n=t.of??"run";if(t.optional&&e.trim()==="")return;if(t.number)return/^\s*\d+([.,]\d+)?\s*$/.test(e)?Number(e.trim().replace(",",".")):e;if(t.count)return/^\s*\d{1,9}\s*$/.test(e)?Number(e):e;let o=Xy(t,n);return o&&Ve(e)?`${e.trim()} ${o}`:e}function Xy(t,e){return Je(g(e,t.at))||t.unit||""}var ft=(t,e,n)=>e||n?r`<p id="${t}-said" class=${e?"complaint":"hint"}>${e??n}</p>`:u,Tu=!1;addEventListener("pointerdown",()=>Tu=!0,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>Tu=!1,!0);var tv=()=>h({typed:void 0});function rs(t){let{id:e}=t.target,n=()=>{tv(),ch(e)};Tu?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var ev=t=>typeof t=="string"&&t.startsWith("?")?t.slice(1).trim():void 0,nv=({unit:t="",told:e=""},n)=>[t.replace("cm2","cm\xB2"),e,n?"required":""].filter(Boolean).join(", ")||u;function f(t){let e=t.of??"run",n=z(e,t.at),o=g(e,t.at),i=ev(o),s=l.typed?.key===n,a=s?l.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||a.trim()===""&&(!t.optional||t.is_due===!0);d&&ne(e,t.at,n,t.label);let c=Bt(e,t.at),p=w=>{let b=w.target.value;h({typed:{key:n,text:b}});let k=Zy(t,b);V(e,k===void 0&&t.takes_part?Yy(e,t.at):t.at,k)},_=(s&&typeof o=="string"&&o!==a?`taken as ${o}`:"")||t.hint||i;return r`<div
    class="field ${t.wide?"wide":""} ${t.short?"short":""} ${c?"wants":""}"
  >
    ${Ru(r`<label for=${n} data-said=${nv(t,d)}>${t.label}</label>`,t.term)}
    <input
      id=${n}
      type=${t.date?"date":"text"}
      aria-required=${t.optional&&!t.is_due?u:"true"}
      .value=${F(a)}
      @input=${p}
      @blur=${rs}
      autocomplete="off"
      spellcheck="false"
      inputmode=${t.date?u:t.count?"numeric":t.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",t.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${ft(n,c,_)} ${t.term?Ae(t.term):u}
  </div>`}var Ru=(t,e)=>e?r`<div class="labelled">${t}${hn(e)}</div>`:t;function Nt(t){for(let e=t?.closest("details");e;e=e.parentElement?.closest("details"))e.open=!0;t?.focus()}var H=t=>()=>document.getElementById(t),Z=(t,e)=>H(z(t,e)),De=t=>()=>document.querySelector(`#${t} :is(input, select, button[aria-pressed])`),ov=()=>document.activeElement;function G(t){requestAnimationFrame(()=>Nt(t()))}function oe(t,e,n,o=ov){q(e),qm(t,n),G(o)}function W(t,e,n,o,i){oe(t,e,s=>P(s,n,o),i)}var ge=(t,e,n)=>`${z(t,e)}-${n}`;function C(t,e){let n=yt(t,e);return n?r`<p id=${z(t,e)} class="complaint" tabindex="-1">${n}</p>`:u}var mh=(t,e,n)=>e.map(([o,i])=>r`<button type="button" aria-pressed=${o===t?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function at(t,e,n,o){return r`<div class="choice" role="group" aria-label=${t}>${mh(e,n,o)}</div>`}function T({of:t="run",question:e,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:a,puts:d,then:c,hint:p,optional:m,term:_}){let w=i?ge(t,n,e.replaceAll(/\W+/g,"-")):z(t,o),b=s===void 0&&!m;b&&ne(t,o,w,e);let k=i?void 0:yt(t,o),U=Pt=>{if(Pt===s)return;let Zn=a.find(([ib])=>ib===Pt)[1];W(t,`${e}: ${Zn}`,n,d(Pt),c&&Z(t,c(Pt)))};return r`<div class="field asked ${k?"wants":""}">
    ${Ru(r`<p class="question" id="${w}-label" data-said=${b?"required":u}>${e}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${w}
      tabindex="-1"
      aria-labelledby="${w}-label"
      aria-describedby=${k||p?`${w}-said`:u}
    >
      ${mh(s,a,U)}
    </div>
    ${ft(w,k,p)} ${_?Ae(_):u}
  </div>`}function Su(t,e,n,o){let i=z("run",t),s=yt("run",t),a=()=>W("run",`${e}: ${n?"no":"yes"}`,t,n?void 0:o);return r`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${s?`${i}-said`:u}
        @click=${a}
      >
        ${e}
      </button>
    </div>
    ${ft(i,s)}`}function gt({label:t,of:e="run",at:n,answers:o,unsaid:i,optional:s,chosen:a,take:d}){let c=z(e,n),p=Bt(e,n),m=a??A(e,n);!m&&!s&&ne(e,n,c,t);let _=!m||o.some(([k])=>k===m),w=[["",i],..._?[]:[[m,m]],...o];return r`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||s?u:"required"}>${t}</label>
    <select
      id=${c}
      aria-required=${s?u:"true"}
      @change=${k=>{let U=k.target.value;d?d(U):V(e,n,U||!s?U:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${w.filter(([k])=>k||s||!m).map(([k,U])=>r`<option value=${k} .selected=${F(k===m)}>${U}</option>`)}</select
    >${ft(c,p)}
  </div>`}function oi(t,e,n=[]){let o=Vt(A("run",e),n);return gt({label:t,at:e,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function ie({of:t="run",at:e,name:n,title:o,add:i,blank:s,body:a}){let d=ge(t,e,"part"),c=ge(t,e,"add"),p=()=>fe({part:o},a);return g(t,e)===void 0?r`<p class="choice">
      <button type="button" id=${c} @click=${()=>W(t,`${o} added`,e,s,De(d))}>
        ${i}
      </button>
    </p>`:r`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>W(t,`${o} removed`,e,void 0,H(c))}
      >
        Remove
      </button>
    </div>
    ${C(t,e)} ${p()}
  </div>`}var fh=(t,e)=>`folded ${t} ${e}`,Et=(t,e)=>rt(fh(t,e));function D({of:t="run",name:e,pointers:n,summary:o,is_needed:i,body:s}){let a=fh(t,e);if(gn())return r`${fe({fold:a},s)}`;(i||n.some(p=>Bt(t,p)))&&rt(a);let d=l.open.has(a);return r`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),qt("open",a)}}>${o}</summary>
    ${d?r`<div class="folded">${s()}</div>`:u}
  </details>`}var x=({of:t="run",at:e})=>tt(t,e),L=({of:t="run",at:e},n)=>ge(t,`${e}/${n}`,"item"),Nr=({of:t="run",at:e},n,o)=>ge(t,`${e}/${n}`,o),iv=({of:t="run",at:e})=>z(t,e);function as(t,e,n,o){let{of:i="run",at:s,stays:a,and:d=c=>c}=t;oe(i,e,c=>d(P(c,s,n.length||a?n:void 0),n.length),o)}function j(t,e,n){let o=x(t);as(t,`${n} added`,[...o,e],De(L(t,o.length)))}function sv(t,e,n){let o=x(t).filter((a,d)=>d!==e),i=Math.min(e,o.length-1),s=o.length>(t.least??0);as(t,`${n} removed`,o,s?H(Nr(t,i,"drop")):Z(t.of??"run",t.at))}function rv(t,e,n,o){let i=[...x(t)],[s]=i.splice(e,1);i.splice(e+n,0,s);let a=n<0?"earlier":"later",c=e+n===0||e+n===i.length-1?n<0?"later":"earlier":a;as(t,`${o} moved ${a}`,i,H(Nr(t,e+n,c)))}function N(t,e,n){let o=x(t).length-1,i=o>=(t.least??0),s=t.in_order&&o>0;if(!i&&!s)return u;let a=(d,c,p)=>r`<button
      type="button"
      id=${Nr(t,e,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>rv(t,e,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return r`<div class="tools">
    ${s?r`${a(-1,"earlier",e===0)} ${a(1,"later",e===o)}`:u}
    ${i?r`<button
            type="button"
            id=${Nr(t,e,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>sv(t,e,n)}
          >
            ×
          </button>`:u}
  </div>`}function Y(t,e,n){let o=iv(t),i=yt(t.of??"run",t.at);return r`${ft(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${e}
    </button>`}var wo="/pipe/beads",_n=`${wo}/tip`,av={of:"run",at:_n},Qe={at:`${wo}/moves`,in_order:!0},Au="\0own",$h={tip:"",bead_to_opening:"",moves:[]},Pe=(t,e)=>({name:t,label:e,kind:"length"}),hh={name:"count",label:"How many",kind:"count"},gh=Pe("circle_radius","Radius of their circle"),Du={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Pe("diameter","Diameter"),Pe("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[Pe("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Pe("start_radius","Radius at the start"),Pe("end_radius","Radius at the end"),Pe("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Pe("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[hh,gh,Pe("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[hh,gh,Pe("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Pe("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function wh(t){return r`${uv()} ${Pu()?zr(av):fv()}
    ${f({label:"Bead \xF7 tip opening",at:`${wo}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${x(Qe).map((e,n)=>bv(e,n,t))}</div>
    ${kv()}`}var Pu=()=>typeof g("run",_n)=="object",bh=()=>String(g("run",`${wo}/own_tips`)??g("studio","/own_tips")??"");function lv(){let t=bh(),e=t?du(t):[];return g("run",`${wo}/own_tips`)===void 0?[...e,...Xi()]:e}function uv(){let t=n=>n===Au?W("run","a tip of your own",_n,{name:"",round:{radius:""}},cv):V("run",_n,n),e=lv().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return r`${gt({label:"Tip",at:_n,answers:[...e,[Au,"My own, measured"]],unsaid:"Which tip?",take:t,chosen:Pu()?Au:void 0})}
  ${Pu()?u:D({name:"tips",pointers:[`${wo}/own_tips`],summary:"Tips of a file of your own",body:()=>f({label:"File of tips",at:`${wo}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var dv=ge("run",_n,"own"),cv=De(dv);async function pv(){let t=g("run",_n);if(!await eu())return;let e=tt("own_tips","/tips"),n=mv(String(t.name).trim()||"My tip",e);He([["own_tips",o=>P(o,`/tips/${e.length}`,{...t,name:n})],["run",o=>P(o,_n,n)]]),q(`${n} kept in ${l.beside.own_tips.file}`)}function mv(t,e){for(let n=1;;++n){let o=n===1?t:`${t} ${n}`;if(![...e,...Xi()].some(i=>i.name===o))return o}}function fv(){let t=A("run",_n),e=bh();if(!t||!e||!du(e).some(o=>o.name===t))return u;let n=tt("own_tips","/tips").findIndex(o=>o.name===t);return n<0?r`<button type="button" @click=${()=>{eu()}}>Change this tip of my own</button>`:zr({of:"own_tips",at:`/tips/${n}`})}var _h=[["round","Round"],["star","Star"],["outline","Another outline"]],Ur={x:"",y:""},hv={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Ur,Ur,Ur]};function zr({of:t,at:e}){let n=_h.map(([s])=>s),o=n.find(s=>g(t,`${e}/${s}`)!==void 0),i=s=>({...pt(t,e,n),[s]:hv[s]});return r`<div class="part" id=${ge(t,e,"own")} role="group" aria-label="My own tip">
    ${C(t,e)} ${gv({of:t,at:e})}
    ${T({of:t,question:"Opening of the tip",at:e,is_told_elsewhere:!0,chosen:o,answers:_h,puts:i})}
    ${o?$v({of:t,at:e},o):u}
    ${D({of:t,name:t==="run"?"hand":`hand ${e}`,pointers:[`${e}/hand`,`${e}/note`],summary:"Correction for your hand",body:()=>_v({of:t,at:e})})}
    ${t==="run"?r`<button type="button" @click=${()=>{pv()}}>Keep this tip for all my runs</button>`:r`<p class="hint">It stands in ${l.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var gv=({of:t,at:e})=>t==="run"?f({label:"What you call the tip",at:`${e}/name`}):r`<p class="part-title">${A(t,`${e}/name`)}</p>`;function _v({of:t,at:e}){let n=`${e}/hand`,o=i=>g(t,i)!==void 0;return r`<div class="row">
      ${f({of:t,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?f({of:t,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?r`<button
            type="button"
            @click=${()=>W(t,"correction removed",n,void 0,De(ge(t,e,"own")))}
          >
            Leave the correction out
          </button>`:u}
    ${f({of:t,label:"Note on the tip",at:`${e}/note`,optional:!0})}`}function $v(t,e){if(e==="outline")return wv(t);let{of:n,at:o}=t,i=(s,a)=>f({of:n,label:a,at:`${o}/${e}/${s}`,unit:"mm",short:!0});return r`<div class="row">
    ${e==="round"?i("radius","Radius of the opening"):r`${f({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function wv({of:t,at:e}){let n={of:t,at:`${e}/outline`};return r`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${x(n).map((o,i)=>r`<div class="row" id=${L(n,i)}>
          ${f({of:t,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${f({of:t,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${N(n,i,`corner ${i+1}`)}
        </div>`)}
    ${Y(n,"One more corner",()=>j(n,Ur,"corner"))}`}function bv(t,e,n){let o=Du[String(t.move)],i=`${Qe.at}/${e}`,s=`${e+1}. ${o?.words??String(t.move)}`;return r`<div class="part" id=${L(Qe,e)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${N(Qe,e,s)}
    </div>
    ${C("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(a=>yv(i,a))}
      ${f({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${vv(e,n)}
  </div>`}function yv(t,{name:e,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,a=o==="length"||o==="signed"?"mm":void 0;return f({label:n,at:`${t}/${e}`,unit:a,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function vv(t,e){let n=e?.visible_by?.moves??[],o=n[t];if(!o||n.length!==x(Qe).length)return u;let i=o.length_mm>0?`${S(o.length_mm/10,1)} cm of bead`:"";return M({key:`pipe.move.${t}`,label:"Lays down",note:i,shown:St(l.units,o.volume_ml),of:`pipe.visible_by.moves.${t}.volume_ml`})}function kv(){let t=o=>({move:o,...Object.fromEntries(Du[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),e=z("run",Qe.at),n=yt("run",Qe.at);return x(Qe).length||ne("run",Qe.at,e,"What the tip does"),r`${ft(e,n)}
    <div
      class="choice words"
      role="group"
      id=${e}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${e}-said`:u}
    >
      ${Object.entries(Du).map(([o,{words:i,does:s}])=>r`<button type="button" @click=${()=>j(Qe,t(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function Ge(t,e=()=>{}){if(!t.theirs)return u;let n=uo(t),o=`conflict-${t.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{lm(t),e()};return r`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${t.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${t.failed?r`<p class="complaint" role="status">Not loaded: ${t.failed}.</p>`:u}
    <div class="choice">
      ${n?r`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>um(t)}>Leave it deleted</button>`:r`<button type="button" @click=${()=>am(t)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function Ye(t){if(t.theirs||!t.set_aside||Uo(t)&&!t.is_taken)return u;let e=()=>{Uo(t)&&ho(),dm(t)};return r`<section class="banner quiet" aria-label="${t.file} was changed">
    <p>
      ${t.file} was changed outside this page, and stands here as it is
      now.${t.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${e}>Change to the other text</button>
      ${t.is_taken?r`<button type="button" @click=${()=>sm(t)}>Close</button>`:u}
    </div>
  </section>`}var Jr={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function vh(t,e){let n=Yi(t);if(!Array.isArray(n)||!n.some(d=>d.id===e))return u;let i=tt("own_fats","/fats").findIndex(d=>d.id===e);if(!(i>=0&&l.beside.own_fats!==void 0))return r`<button type="button" @click=${()=>{xv(t,e)}}>Change this fat of my own</button>`;let a=`/fats/${i}`;return D({of:"own_fats",name:e,pointers:[a],summary:`My own fat, in ${l.beside.own_fats.file}`,body:()=>fe({part:A("own_fats",`${a}/name`)||"Your own fat"},()=>Ou(a))})}async function xv(t,e){await vr(t),Et("own_fats",e);let n=tt("own_fats","/fats").findIndex(o=>o.id===e);G(H(`f-own_fats-fats-${n}-name`))}var Tv=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function Ou(t){let e=(n,o,i,s=!1)=>f({of:"own_fats",label:o,at:`${t}/${n}`,hint:i,optional:s});return r`${C("own_fats",t)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${e("name","Name of the fat")} ${e("source","The document","Supplier, name, date.")}
      ${e("lot","Lot",void 0,!0)}
    </div>
    ${T({of:"own_fats",question:"What it is",at:`${t}/kind`,chosen:A("own_fats",`${t}/kind`)||void 0,answers:Tv,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${Rv(`${t}/saponification_value`)}
    <div class="row">
      ${e("inci","INCI name")}
      ${e("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${e("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${D({of:"own_fats",name:`${t} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${t}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>Sv(t)})}`}function Rv(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"?"range":"one",o=(i,s,a=!1)=>f({of:"own_fats",label:s,at:i,number:!0,short:!0,optional:a,unit:"mg KOH/g"});return r`${T({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:t,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(t,"Saponification value"):r`${o(`${t}/low`,"Lowest")} ${o(`${t}/typical`,"Typical",!0)}
            ${o(`${t}/high`,"Highest")}`}
    </div>`}function Sv(t){let e=(o,i,s,a)=>{let d=`${t}/${o}`,c=g("own_fats",d)!==void 0,p=()=>W("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:s);return r`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?r`${C("own_fats",d)}${a()}`:u}
    </div>`},n=(o,i,s,a=!1)=>f({of:"own_fats",label:i,at:`${t}/${o}`,unit:s,number:a,short:!0});return r`<div class="items">
      ${e("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${t}/iodine_value`)=="object"?r`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${e("density","Density when molten",{at:"",low:"",high:""},()=>r`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${e("melting_range","Melting range",{low:"",high:""},()=>r`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${Av(`${t}/fatty_acids`)}
    <div class="row">
      ${f({of:"own_fats",label:"Unsaponifiable, at most",at:`${t}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${f({of:"own_fats",label:"Note on the fat",at:`${t}/note`,optional:!0})}
    </div>`}var yh=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function Av(t){let e=Object.keys(g("own_fats",t)??{}),n=yh.filter(([a])=>!e.includes(a)),o=a=>yh.find(([d])=>d===a)?.[1]??a,i=a=>`${t}/${B(a)}`,s=a=>{let d=Array.isArray(g("own_fats",i(a))),c=(p,m)=>f({of:"own_fats",label:`${o(a)}, ${m}`,at:`${i(a)}/${p}`,unit:"%",short:!0});return r`<div class="row">
      ${d?r`${c(0,"lowest")} ${c(1,"highest")}`:f({of:"own_fats",label:o(a),at:i(a),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(a)}"
        @click=${()=>W("own_fats",`${o(a)} removed`,e.length>1?i(a):t,void 0)}
      >
        ×
      </button>
    </div>`};return r`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${C("own_fats",t)} ${e.map(s)}
    <div class="row">
      ${gt({label:"Add a fatty acid",of:"own_fats",at:`${t}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:a=>a&&W("own_fats",`${o(a)} added`,i(a),["",""])})}
    </div>`}function ii(t){let{pieces:e,batches:n,batch_limits:o,around:i,...s}=t,[a]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=a;return{...s,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:a,place:"batches.0",whippings:c?.whippings??[],whole:t}}var K=(t,e,n=`${e}s`)=>`${t} ${t===1?e:n}`,Dv=t=>t.cut?["loaf","loaves"]:["cast","casts"];function Ze(t,{pieces:e,casts:n}){let o=t.cut?K(e,"bar"):K(e,"piece");return n===e?o:`${o} from ${K(n,...Dv(t))}`}var Pv=t=>t===1?"once":`${t} times`,Mu=t=>t.batches.length>1,It=t=>t.pieces.batches>1;function Oe(t){return t.length<2?t.join(""):`${t.slice(0,-1).join(", ")} and ${t.at(-1)}`}function ht(t){return It(t.whole)?`one batch, ${Ze(t.whole,t.batch)}`:""}var kh=({whippings:t})=>t.length>1||(t[0]?.count??0)>1;function Fu(t,e){return kh(t)?`${Ze(t.whole,e)}${e.count>1?`, whipped ${Pv(e.count)}`:""}`:""}function Vr(t,e){let n=Fu(t,e);return n&&`one whipping: ${n}`}var xh=t=>It(t.whole)||kh(t),Kr=(t,e)=>`${K(t,"filling")} of ${K(e,"cavity","cavities")}`;var Th=t=>[...l.files?.runs??[],...l.files?.orders??[],...l.files?.formulas??[]].find(e=>e.file===t)?.name||t;function Qr(t){let e=t?.used_by??[];return e.length?r`<p class="aside">Used by ${Oe(e.map(Th))}.</p>`:u}function si(t){let e=t?.used_by??[];return e.length<2?u:r`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${Oe(e.map(Th))}: a change here changes
    ${e.length===2?"both":`all ${e.length}`}.
  </p>`}var ls={of:"own_fats",at:"/fats",least:1},Gr={of:"own_tips",at:"/tips",least:1},bo=({of:t,at:e})=>tt(t,e);function Rh(t){return Ah(t,ls,"fats",e=>{let n=`/fats/${e}`;return D({of:"own_fats",name:String(bo(ls)[e].id),pointers:[n],summary:r`<span
        >${A("own_fats",`${n}/name`)||"Without a name"}<small
          >${Ov(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>Ou(n)})})}function Ov(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"&&!Array.isArray(e)?e:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(e??"");return o?`${o} mg KOH/g`:"saponification value not given"}function Sh(t){return Ah(t,Gr,"tips",e=>{let n=`/tips/${e}`;return r`<div class="tip-row">
      ${rh(bo(Gr)[e])}
      ${D({of:"own_tips",name:`tip ${e}`,pointers:[n],summary:A("own_tips",`${n}/name`)||"Without a name",body:()=>zr({of:"own_tips",at:n})})}
    </div>`})}function Ah(t,e,n,o){let i=l.files?.[n].find(({file:a})=>a===t.file),s=a=>String(bo(e)[a].name||`number ${a+1}`);return r`${Ge(t)} ${Ye(t)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${t.file}</h2>
      ${si(i)}
      ${t.shipped?r`<p class="aside">Built-in: your first change is saved as a copy.</p>`:u}
      <div class="items">
        ${bo(e).map((a,d)=>r`<div class="held" id=${L(e,d)} role="group" aria-label=${s(d)}>
              ${o(d)} ${N(e,d,s(d))}
            </div>`)}
      </div>
    </section>`}var Cu=(t,e)=>({...Jr,id:Lr(t,e),name:t});function Dh(t){let e=Cu(t,[...l.fats,...bo(ls)]);j(ls,e,t),Et("own_fats",String(e.id)),G(Z("own_fats",`/fats/${bo(ls).length-1}/source`))}var Lu=t=>({name:t});function Ph(t){j(Gr,Lu(t),t);let e=bo(Gr).length-1;Et("own_tips",`tip ${e}`),G(De(ge("own_tips",`/tips/${e}`,"own")))}var Oh=(t,e,n)=>{let o=new Map;for(let i=e;i<=n;i++)o.set(t[i],i);return o},Yr=Mr(class extends ti{constructor(t){if(super(t),t.type!==mn.CHILD)throw Error("repeat() can only be used in text expressions")}dt(t,e,n){let o;n===void 0?n=e:e!==void 0&&(o=e);let i=[],s=[],a=0;for(let d of t)i[a]=o?o(d,a):a,s[a]=n(d,a),a++;return{values:s,keys:i}}render(t,e,n){return this.dt(t,e,n).values}update(t,[e,n,o]){let i=Qf(t),{values:s,keys:a}=this.dt(e,n,o);if(!Array.isArray(i))return this.ut=a,s;let d=this.ut??=[],c=[],p,m,_=0,w=i.length-1,b=0,k=s.length-1;for(;_<=w&&b<=k;)if(i[_]===null)_++;else if(i[w]===null)w--;else if(d[_]===a[b])c[b]=Bn(i[_],s[b]),_++,b++;else if(d[w]===a[k])c[k]=Bn(i[w],s[k]),w--,k--;else if(d[_]===a[k])c[k]=Bn(i[_],s[k]),ei(t,c[k+1],i[_]),_++,k--;else if(d[w]===a[b])c[b]=Bn(i[w],s[b]),ei(t,i[_],i[w]),w--,b++;else if(p===void 0&&(p=Oh(a,b,k),m=Oh(d,_,w)),p.has(d[_]))if(p.has(d[w])){let U=m.get(a[b]),Pt=U!==void 0?i[U]:null;if(Pt===null){let Zn=ei(t,i[_]);Bn(Zn,s[b]),c[b]=Zn}else c[b]=Bn(Pt,s[b]),ei(t,i[_],Pt),i[U]=null;b++}else Cr(i[w]),w--;else Cr(i[_]),_++;for(;b<=k;){let U=ei(t,c[k+1]);Bn(U,s[b]),c[b++]=U}for(;_<=w;){let U=i[_++];U!==null&&Cr(U)}return this.ut=a,Fr(t,c),Mt}});async function lt(t){h({list_complaint:""});try{await t()}catch(e){h({list_complaint:e instanceof Error?e.message:String(e)}),e instanceof v&&await pe().catch(()=>{})}}var Wu=()=>{lt(Jm)},Mh=()=>{lt(Vm)};function _e(t){return r`<h1 tabindex="-1">${t}</h1>
    ${l.list_complaint?r`<p class="alarm" role="alert">${l.list_complaint}</p>`:u}
    ${l.list_told&&Vi()?r`<p class="told" role="status">
            ${l.list_told} <button type="button" @click=${Wu}>Undo</button>
          </p>`:u}
    ${(l.files?.cut??[]).map(e=>r`<p class="alarm">
          More lies in ${e.folder} than is looked at: ${e.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Fh=new Map,Ch=Promise.resolve();function Lh(t,e=""){let n=`${t}
${e}`,o=Fh.get(n);return o||(o=Ch.then(()=>Mv(t)),Ch=o,Fh.set(n,o)),o}async function Mv(t){try{let e=await Le({kind:"glb",gauge:{file:t}}),n=Qo(await e.arrayBuffer());return Qi(n.find(o=>o.name==="cavity")??n[0])}catch(e){if(e instanceof v)return;throw e}}var Bu=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#t=new IntersectionObserver(([e])=>e.isIntersecting&&this.#e(),{rootMargin:"200px"});connectedCallback(){this.#t.observe(this)}disconnectedCallback(){this.#t.disconnect()}attributeChangedCallback(){this.#t.disconnect(),this.isConnected&&this.#t.observe(this)}#e(){this.#t.disconnect();let e=this.getAttribute("file")??"";requestIdleCallback(()=>{Lh(e,this.getAttribute("changed")??"").then(n=>{e===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let e=this.#n;if(!e)return void de(u,this);let{left:n,right:o,floor:i,brim:s,loops:a}=e,d=.04*Math.max(o-n,s-i),c=[n-d,-s-d,o-n+2*d,s-i+2*d];de(r`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${Ki(a)} />
      </svg>`,this)}};customElements.define("mould-picture",Bu);var Me=(t,e)=>r`<ul class="cards">
    ${Yr(t,({file:n})=>n,e)}
  </ul>`;function Xe(t){let{one:e,facts:n,picture:o,open:i}=t,s=l.list_open?.file===e.file?l.list_open:void 0,a=e.name||e.file;return r`<li class="file">
    <button type="button" class="open" @click=${()=>{lt(i)}}>
      ${o?r`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${a}</b>${n.length?r`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${e.shipped?"built-in":e.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${s?"true":"false"}
      aria-label="Name, note, copy or remove: ${a}"
      @click=${()=>Fv(t,!s)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${s?Cv(t,s):u}
  </li>`}function Fv({one:t},e){let{file:n,name:o,note:i}=t;h({list_open:e?{file:n,name:o,note:i,stem:Ko(n)}:void 0})}function Cv(t,e){let{kind:n,one:o}=t,i=r`<button type="button" @click=${()=>{lt(()=>Wv(n,o))}}>Copy</button>`;if(o.shipped)return r`<div class="acts"><div class="choice">${i}</div></div>`;let s=["name","note"].every(c=>o[c]===e[c])&&Ko(o.file)===e.stem,a=n.name==="fats"||n.name==="tips"||e.name.trim()!=="",d=()=>{lt(()=>Bv(t,e))};return r`<div class="acts">
    ${Qr(o)} ${n.called?Eu(n.called==="for"?"For":"Name",e,"name"):u}
    ${n.name==="tips"?u:Eu("Note",e,"note")} ${Eu("Name of the file",e,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${s||!a||!e.stem.trim()} @click=${d}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{lt(()=>Wh(o,e,!1))}}>Remove</button>
    </div>
    ${e.used_by?Lv(o,e):u}
  </div>`}function Eu(t,e,n){let o=`list-${n}`,i=s=>y(e,{[n]:s.target.value});return r`<div class="field">
    <label for=${o}>${t}</label>
    <input id=${o} .value=${F(e[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function Lv(t,e){return r`<div role="alert">
    <p class="alarm">${e.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{lt(()=>Wh(t,e,!0))}}>Remove it even so</button>
  </div>`}async function Wv(t,e){let n=await Km(t,e),o=l.files?.[t.list].find(i=>i.file===n);o&&(h({list_open:{file:n,name:o.name,note:o.note,stem:Ko(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function Bv({kind:t,one:e},{name:n,note:o,stem:i}){await Gm(t,e,{name:n.trim(),note:o.trim(),stem:i.trim()}),h({list_open:void 0})}async function Wh(t,e,n){let o=t.used_by??[];if(o.length&&!n)return y(e,{used_by:o});try{await Ym(t,n),h({list_open:void 0})}catch(i){let s=i instanceof v?i.answer.used_by:void 0;if(!s)throw i;y(e,{used_by:s})}}function Zr(t,e,n){let o=[...l.files?.[t.list]??[]].sort((s,a)=>Number(s.shipped)-Number(a.shipped));return o.length?Me(o,s=>Xe({kind:t,one:s,facts:Ev(s),open:()=>n(s.file)})):r`<p class="aside">None yet. ${e}</p>`}var Bh=4;function Ev({holds:t=[],changed:e}){let n=t.length-Bh,o=n>0?[...t.slice(0,Bh),`${n} more`]:t;return[o.length?Oe(o):"",e?`changed ${bt(e)}`:""].filter(Boolean)}var us="";function Xr({label:t,add:e,act:n,tried:o}){let i=()=>{o(async()=>{await n(us.trim()),us="",nt()})},s=a=>{us=a.target.value,nt()};return r`<div class="row">
    <div class="field">
      <label for="new-held">${t}, by name</label>
      <input id="new-held" .value=${F(us)} @input=${s} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!us.trim()} @click=${i}>${e}</button>
  </div>`}function $e(t){let e=l.removed.filter(n=>n.kind===t);return e.length?r`<details class="removed">
    <summary>Removed, and kept still: ${e.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${e.map(Iv)}
    </ul>
  </details>`:u}function Iv(t){let e=t.name||t.file,n=`removed ${t.removed}`,o=l.open.has(n);return r`<li>
    <p>
      <b>${e}</b> <small>${t.file}, removed ${bt(t.removed_at)}, kept until ${bt(t.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${e}" @click=${()=>{lt(()=>Zm(t))}}>
        Bring back
      </button>
      ${o?r`<button
                type="button"
                aria-label="Delete ${e} for good"
                @click=${()=>{lt(()=>Xm(t))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>qt("open",n)}>Keep it</button>`:r`<button type="button" aria-label="Delete ${e} ..." @click=${()=>qt("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function Ih(){let t=Fn();return r`${_e("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${Zr(Be,"Each file is named by the formulas that use its fats.",e=>Ji(Be,e))}
      ${t?Rh(t):u}
      ${Xr({label:"A new fat of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(Dh(e)):kr(Be,Cu(e,l.fats)),tried:lt})}
    </section>
    ${jv()} ${$e("fats")}`}var Eh="fats that are listed";function jv(){let t=l.finding?.key===Eh?l.finding.text:"",e=l.fats.filter(n=>fn(n,t)!==void 0);return r`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${F(t)}
          @input=${n=>h({finding:{key:Eh,text:n.target.value}})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
    </div>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Built-in fats and their figures">
      <table class="figures fats">
        <thead>
          <tr>
            <th scope="col">Fat</th>
            <th scope="col">Saponification value, mg KOH/g</th>
            <th scope="col">INCI name</th>
          </tr>
        </thead>
        <tbody>
          ${e.map(n=>qv(n,t))}
        </tbody>
      </table>
    </div>
    ${e.length?u:r`<p class="hint">None is called so.</p>`}
  </section>`}function qv(t,e){let{low:n,high:o,typical:i}=t.saponification_value_mg_koh_per_g,s=fn(t,e),a=d=>S(d,1);return r`<tr>
    <th scope="row">${t.name}${s&&s!==t.name?r` <small>${s}</small>`:u}</th>
    <td>${a(i)} <small>${a(n)} to ${a(o)}</small></td>
    <td>${t.inci}</td>
  </tr>`}var jh=t=>t.goes_into==="lye",qh=({role:t})=>t==="alkali",Hv=t=>qh(t)?"down":"nearest",yo=(t,e)=>mt(t,e,Hv(e));function ta(t){let e=t.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>jh(i)),n=({one:i})=>i.role==="water",o=({one:i})=>qh(i);return[...e.filter(n),...e.filter(i=>!n(i)&&!o(i)),...e.filter(o)]}function Hh(t){return t.ingredients.map((e,n)=>({one:e,i:n})).filter(({one:e})=>!jh(e))}function Iu(t){let e=A(t,"/measured_density");return r`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${f({label:"Temperature at the pour",of:t,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${f({label:"Cure",of:t,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${f({label:"Unmould after",of:t,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${f({label:"Cut within",of:t,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${Jv(t)}
    ${D({of:t,name:"density",pointers:["/measured_density"],summary:`Measured density${e&&`: ${e}`}`,body:()=>f({label:"Of the plain, unwhipped batter, by weigh-cup",of:t,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var Nv=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],Nh={after:"",mass:""},Uh=3,Uv={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:Uh},()=>Nh)}}};function zv(t){return g(t,"/drying/weighings")!==void 0?"weighed":g(t,"/drying")!==void 0?"law":g(t,"/water_lost_in_cure")===void 0?"unsaid":"share"}function Jv(t){let e=zv(t);return r`${T({of:t,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:e,answers:Nv,puts:o=>({...pt(t,"",["drying","water_lost_in_cure"]),...Uv[o]})})}
  ${e==="share"?r`<div class="row">
          ${f({label:"Of the batter's water, gone when it is sold",of:t,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${e==="law"?r`<div class="row">
          ${f({label:"Of the batter's water, gone in the end",of:t,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${f({label:"After this, 63 % of that is gone",of:t,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${e==="weighed"?Vv(t):u}`}function Vv(t){let e={of:t,at:"/drying/weighings",least:Uh};return r`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${x(e).map((n,o)=>r`<div class="row named" id=${L(e,o)}>
          ${f({label:"Time since the pour",of:t,at:`${e.at}/${o}/after`,unit:"days",short:!0})}
          ${f({label:"Mass",of:t,at:`${e.at}/${o}/mass`,unit:"g",short:!0})}
          ${N(e,o,`weighing ${o+1}`)}
        </div>`)}
    ${Y(e,"One more weighing",()=>j(e,Nh,"weighing"))}`}var Kv=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],ea=t=>Ln(t).map(e=>[e.id,e.name]),zh=["unsaid","Not given"],Jh=["none","Holds none"],Vh=t=>t===void 0?"unsaid":t==="none"?"none":"some",Qv=t=>e=>e==="some"?t:e==="none"?"none":void 0;function Kh(t,e){return ju(t,`${e}/contains_fat`,[zh,Jh,["some","Holds fat"]],ea(t))}function ju(t,e,n,o){let i=Vh(g(t,e)),s=n.some(([a])=>a===i)?i:void 0;return r`${T({of:t,question:"Fat in it",at:e,chosen:s,answers:n,puts:Qv({fat:"",share:""})})}
  ${i==="some"?r`<div class="row">
          ${gt({label:"Which fat",of:t,at:`${e}/fat`,answers:o,unsaid:"choose ..."})}
          ${f({label:"Fat in what is weighed",of:t,at:`${e}/share`,unit:"%",short:!0})}
        </div>`:u}`}var Gv=[zh,Jh,["some","Holds acid"],["typed","By what it takes up"]],Yv={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function qu(t,e){let n=`${e}/contains_acid`,o=g(t,`${n}/takes_up`)!==void 0?"typed":Vh(g(t,n));return r`${T({of:t,question:"Acid in it",at:n,chosen:o,answers:Gv,puts:i=>Yv[i]})}
  ${o==="some"?r`<div class="row">
          ${gt({label:"Which acid",of:t,at:`${n}/acid`,answers:Kv.map(i=>[i,i]),unsaid:"choose ..."})}
          ${f({label:"Of that acid in what is weighed",of:t,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?r`<div class="row">
          ${f({label:"Taken up by 1 g of it",of:t,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Hu(t,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Hu(t,e,n){let o=g(t,e)===!0?"yes":"no";return T({of:t,question:n,at:e,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var Zv=["tsp/lb","tbsp/lb","tsp/kg"],na=["%","g/kg",...Zv].flatMap(t=>[`${t} of fats`,`${t} of batter`]),Gh=[...na,"% of finished soap","g/kg of finished soap"];function Qh(t,e){let n=t.trim().replaceAll(/\s+/g," "),o=[...e].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():t,o]}function oa(t,e,n,o,i=!1){let s=z(t,e),[a,d]=Qh(A(t,e),o),c=l.typed?.key===s?l.typed.text:a;!i&&!(a.trim()&&d)&&ne(t,e,s,a.trim()?`${n}: of what`:n);let m=Bt(t,e),_=(b,k)=>{let U=`${b.trim()} ${k}`.trim();V(t,e,i&&!b.trim()?void 0:U),nt()},w=b=>{let k=b.target.value,[U,Pt]=Qh(k,o);h({typed:{key:s,text:k}}),_(U,Pt||d)};return r`<div class="field rate ${m?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${F(c)}
        @input=${w}
        @blur=${rs}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${s}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${b=>_(c,b.target.value)}
      >
        <option value="" .selected=${F(d==="")}>of what?</option>
        ${o.map(b=>r`<option value=${b} .selected=${F(b===d)}>${b}</option>`)}
      </select>
    </div>
    ${ft(s,m)}
  </div>`}function Xv(t){let e=t.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=e.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:e.length-n.length}}var tk=.01+1e-9;function ri(t,e){let{sum:n,unread:o}=Xv(e),i=a=>`${String(Math.round(a*1e6)/1e6)} %`;if(o===e.length)return`${t} have no share yet.`;if(o)return`${t} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=tk?`${t} add to ${i(n)}.`:s>0?`${t} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${t} add to ${i(n)}: ${i(-s)} too much.`}var Yh=(t,e)=>Ln(t).find(n=>n.id===e)?.name??e,ds=t=>({of:t,at:"/fats",in_order:!0,stays:!0}),ia=t=>x(ds(t));function zu(t){let e=ia(t),n=l.picking?.of===t&&l.picking.row===e.length;return r`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${e.map((o,i)=>ek(t,i,e))}
    </ol>
    <p class="total" role="status">
      ${e.length?ri("The fats",e.map(o=>o.share)):"No fat yet."}
    </p>
    ${e.length?u:ne(t,"/fats",z(t,"/fats"),"The fats")}
    ${n?Xh(t):Y(ds(t),"Add a fat",()=>Zh(t,e.length))} ${uk(t)}
  </section>`}function ek(t,e,n){let o=`/fats/${e}`,i=Yh(t,String(n[e].fat??""))||"Which fat?",s=yt(t,`${o}/fat`)??yt(t,o),a=l.picking?.of===t&&l.picking.row===e;return r`<li class="formula-row" id=${L(ds(t),e)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${z(t,`${o}/fat`)}
        aria-expanded=${a?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>a?Nu():Zh(t,e)}
      >
        ${i}
      </button>
      ${f({label:"Share",of:t,at:`${o}/share`,unit:"%",short:!0})} ${N(ds(t),e,i)}
    </div>
    ${s?r`<p class="complaint">${s}</p>`:u} ${a?Xh(t):u}
    ${vh(t,String(n[e].fat??""))}
    ${D({of:t,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${ik(n[e])}`,body:()=>ak(t,e)})}
  </li>`}function Zh(t,e){h({picking:{of:t,row:e,text:""}}),G(H("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Nu(){let t=l.picking;h({picking:void 0}),t&&G(Z(t.of,t.row<ia(t.of).length?`/fats/${t.row}/fat`:"/fats"))}function Uu(t,e){let{row:n}=l.picking,o=ia(t);h({picking:void 0});let i=o[n]?{fat:e,share:o[n].share??""}:{fat:e,share:""};as(ds(t),`${Yh(t,e)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],Z(t,`/fats/${n}/share`))}function Xh(t){let{row:e,text:n}=l.picking,o=ia(t).map(m=>m.fat),i=nk(t,n),s=i.filter(m=>!o.includes(m.id)||o[e]===m.id),a=s.find(m=>m.id===l.picking.lit),d=m=>{h({picking:{of:t,row:e,text:m.target.value}})},c=m=>{let _=a?s.indexOf(a)+m:m>0?0:s.length-1,w=s[(_+s.length)%s.length];w&&(h({picking:{of:t,row:e,text:n,lit:w.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${w.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&Nu(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let _=s.find(b=>Ht(b.name)===Ht(n.trim())),w=a??(s.length===1?s[0]:_);m.key==="Enter"&&w&&Uu(t,w.id)};return r`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${a?`fat-${a.id}`:u}
          .value=${n}
          @input=${d}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${Nu}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[e]!==m.id,w=fn(m,n);return r`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===a?"lit":""}
          ?disabled=${_}
          aria-selected=${m===a||o[e]===m.id?"true":"false"}
          @click=${()=>Uu(t,m.id)}
        >
          ${m.name}${w===m.name||!w?"":`, ${w}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{ok(t,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function nk(t,e){let n=Ln(t).filter(a=>fn(a,e)!==void 0),o=e.split(/\s+/).filter(a=>a.length>2);if(n.length||o.length<2)return n;let i=a=>o.filter(d=>fn(a,d)!==void 0).length,s=Math.max(...Ln(t).map(i));return s?Ln(t).filter(a=>i(a)===s):[]}async function ok(t,e){if(!await vr(t))return;let o=e.trim(),i=Lr(o,[...l.fats,...tt("own_fats","/fats")]),s=tt("own_fats","/fats").length;V("own_fats",`/fats/${s}`,{...Jr,id:i,name:o}),Uu(t,i),Et("own_fats",i),G(Z("own_fats",`/fats/${s}/${o?"inci":"name"}`))}function ik(t){let e=t.saponification_value,n=e,i=e===""||e!==null&&typeof e=="object"&&n.low===""?"to be filled in":e===void 0?"published values":e!==null&&typeof e=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(e)} mg KOH per g`;return`: ${t.lot?`${String(t.lot)}, `:""}${i}`}var sk=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],rk={published:void 0,one:"",range:{low:"",typical:"",high:""}};function ak(t,e){let n=`/fats/${e}/saponification_value`,o=g(t,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=g(t,`/fats/${e}/confirmed`)!==void 0,a=(d,c)=>f({label:d,of:t,at:c,number:!0,short:!0});return r` ${f({label:"Lot",of:t,at:`/fats/${e}/lot`,optional:!0,short:!0})}
  ${T({of:t,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:sk,puts:d=>rk[d],hint:lk(t,A(t,`/fats/${e}/fat`))})}
  ${i==="one"?r`<div class="row">${a("Saponification value",n)}</div>`:u}
  ${i==="range"?r`<div class="row">
          ${a("Lowest",`${n}/low`)} ${a("Typical",`${n}/typical`)} ${a("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||s?Hu(t,`/fats/${e}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function lk(t,e){let n=Ln(t).find(a=>a.id===e);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:s}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${s}).`}function uk(t){let e=Yi(t),n=Array.isArray(e)?`In it: ${e.map(i=>i.name).join(", ")}.`:e==="none"?"No such file is found from here.":void 0,o=A(t,"/own_fats");return D({of:t,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>f({label:"Its name, as it lies beside this formula",of:t,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var dk=t=>ct.includes(t);function sa(){let t=l.complaint;return!t?.field||t.lye_heavy?!1:ni().some(({of:e,at:n})=>he(e)&&(n===t.field||n.startsWith(`${t.field}/`)))}function cs(){let t=l.complaint?ni():[];return t.length?r`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${t.length}</p>
    <ul class="choice">
      ${t.map(e=>r`<li>
            <button type="button" @click=${()=>ck(e)}>
              ${e.part?r`<small>${e.part}</small> `:u}${e.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function ck({of:t,id:e,folds:n}){for(let o of n)rt(o);h({has_asked:!0}),dk(t)?(l.view!=="formula"||l.formula_of!==t)&&Kt(t):l.view!=="set-up"&&!(t==="own_fats"&&l.view==="formula")&&h({view:"set-up"}),requestAnimationFrame(()=>G(H(e)))}var tg="danger-of-superfat";function Ju(t,e){return r`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${f({label:"Superfat (share of all fat left unsaponified)",of:t,at:"/superfat",unit:"%",term:"superfat",described_by:Wn(t).length?tg:void 0})}
    </div>
    ${os(t,tg)} ${pk(t)} ${$k(t,e)}
  </section>`}function pk(t){let e=tt(t,"/alkali"),n=e.length>1?"both":e[0]?.alkali;return r`${T({of:t,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>mk(e,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${e.map((i,s)=>fk(t,i,s,e.length>1))}
  ${e.length>1?r`<p class="total" role="status">
          ${ri("The two",e.map(i=>i.share))}
        </p>`:u}`}function mk(t,e){let n=(o,i)=>({purity:"",...t.find(s=>s.alkali===o),alkali:o,share:i});return e==="both"?[n("NaOH",""),n("KOH","")]:[n(e,"100 %")]}function fk(t,e,n,o){let i=`/alkali/${n}`,s=String(e.alkali??""),a=yt(t,i)??yt(t,`${i}/alkali`);return r`<div class="formula-row">
    ${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row">
      ${o||e.share!=="100 %"?f({label:`${s}: share of the fats it saponifies`,of:t,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${f({label:`${s}: purity`,of:t,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${D({of:t,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${hk(e.purity_range)}`,body:()=>gk(t,i)})}
  </div>`}var hk=t=>Array.isArray(t)?`: ${t.map(String).join(" to ")}`:"";function gk(t,e){let n=`${e}/purity_range`,o=g(t,n)!==void 0;return r`${T({of:t,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?r`<div class="row">
          ${f({label:"Lowest",of:t,at:`${n}/0`,unit:"%",short:!0})}
          ${f({label:"Highest",of:t,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var _k={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function $k(t,e){let n=Object.keys(g(t,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(_k);return r`${T({of:t,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:bk(e)})}
    <div class="row">${n.map(s=>wk(t,s))}</div>`}function wk(t,e){let n=`/water/${e}`;return e==="water_to_alkali"?f({label:"Parts of water for 1 part of pure alkali",of:t,at:n,number:!0}):e==="lye_strength"?f({label:"Strength: pure alkali in alkali and water together",of:t,at:n,unit:"%"}):f({label:"Water, as a share of the fats",of:t,at:n,unit:"%"})}function bk(t){if(!(!t||l.is_old))return`It now makes a strength of ${S(t.lye_strength_percent,1)} %; ${S(t.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${S(t.water_percent_of_fats,1)} % of the fats.`}function jn(t,e,n){let o=yk(t,e);return D({of:t,name:`${e} label`,pointers:["inci","allergens","document"].map(i=>`${e}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>r`${kk(t,`${e}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${eg(t,`${e}/allergens`,"Allergen","Add an allergen",(i,s)=>xk(t,i,s))}
        ${f({label:"Supplier's document, with its date",of:t,at:`${e}/document`,optional:!0})}`})}function yk(t,e){let n=tt(t,`${e}/allergens`).length;return[g(t,`${e}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Vu={name:"",share:""},vk={unsaid:void 0,one:"",many:[Vu]};function kk(t,e,n){let o=g(t,e),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=a=>a==="many"&&o?[{...Vu,name:o}]:vk[a];return r`${T({of:t,question:`INCI of ${n}`,at:e,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?f({label:"INCI name",of:t,at:e}):u}
  ${i==="many"?r`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${eg(t,e,"INCI name","One more INCI name")}`:u}`}function xk(t,e,n){return T({of:t,question:`Allergen ${n+1}: on the EU's list?`,at:`${e}/listed`,chosen:g(t,`${e}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function eg(t,e,n,o,i){let s={of:t,at:e};return r`${x(s).map((a,d)=>r`<div class="row named" id=${L(s,d)}>
        ${f({label:`${n} ${d+1}`,of:t,at:`${e}/${d}/name`})}
        ${f({label:`Share ${d+1}`,of:t,at:`${e}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${e}/${d}`,d)??u} ${N(s,d,String(a.name||`${n} ${d+1}`))}
      </div>`)}
  ${Y(s,o,()=>j(s,Vu,n))}`}var Tk=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:Wk},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:Pk},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:Ok},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:Mk}];function Ku(t){return Tk.map(e=>{let n={of:t,at:`/${e.list}`},o=x(n),i=(s,a)=>r`<li class="formula-row" id=${L(n,a)}>
        ${Sk(t,e,n,s,a)} ${e.row(t,`${n.at}/${a}`,s)}
      </li>`;return r`<section class="card" aria-labelledby="${e.list}-title">
      <h2 id="${e.list}-title">${e.title}</h2>
      ${o.length?r`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:r`<p class="aside">${e.aside}</p>`}
      ${Y(n,e.add,()=>j(n,Rk(e),e.add.replace("Add ","")))}
    </section>`})}function Rk(t){return t.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function Sk(t,e,n,o,i){let s=`/${e.list}/${i}`,a=yt(t,s),d=String(o.name||`number ${i+1} of the ${e.list}`);return r`${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row named">
      ${f({label:"Name",of:t,at:`${s}/name`})}
      ${e.list==="liquids"?u:oa(t,`${s}/rate`,"How much",na)}
      ${N(n,i,d)}
    </div>`}function ng(t,e,n,o){let i=`${e}/goes_into`,s=g(t,i);return T({of:t,question:"Goes into",at:i,chosen:s||void 0,answers:n,puts:p=>p,hint:o||s?void 0:"The batter, unless you name another place.",optional:!o})}function og(t,e,n){let o=g(t,`${e}/stirred_in`);return r`${ng(t,e,Dk,n)}
  ${g(t,`${e}/goes_into`)==="lye"||o!==void 0?T({of:t,question:"Stirred into the lye",at:`${e}/stirred_in`,chosen:String(o??""),answers:Ak,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var Ak=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],Dk=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Qu(t,e,n){let o=(a,d,c)=>a?`${d}${String(a)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(a=>`${e}/${a}`);return D({of:t,name:`${e} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>r` <div class="row">
          ${f({label:"Bulk density (for spoons)",of:t,at:`${e}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${f({label:"True density (in the batter)",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${oa(t,`${e}/limit`,"The most that the supplier's document allows",Gh,!0)}`})}function Gu(t,e,n,o){let i=(a,d)=>a===void 0?"":a==="none"?`no ${d}`:d,s=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return D({of:t,name:`${e} holds`,pointers:[`${e}/contains_fat`,`${e}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>r`${Kh(t,e)} ${o?qu(t,e):u}`})}var ra=(t,e,n)=>jn(t,e,String(n.name||"it"));function Pk(t,e,n){return r`${og(t,e,!0)}
    <div class="folds">${Gu(t,e,n,!0)} ${Qu(t,e,n)} ${ra(t,e,n)}</div>`}function ig(t,e,n){return D({of:t,name:`${e} place`,pointers:[`${e}/goes_into`,`${e}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>og(t,e,!1)})}function Ok(t,e,n){return r`<div class="folds">
    ${Qu(t,e,n)} ${ra(t,e,n)} ${ig(t,e,n)} ${Gu(t,e,n,!1)}
  </div>`}function Mk(t,e,n){return r`${Ck(t,e)}
    <div class="folds">
      ${Qu(t,e,n)} ${ra(t,e,n)} ${ig(t,e,n)} ${Gu(t,e,n,!0)}
    </div>`}var Fk=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function Ck(t,e){let n=`${e}/dispersed_in`,o=g(t,n)!==void 0,i=g(t,`${n}/from`);return r`${T({of:t,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:a=>a==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?r`<div class="row">
            ${gt({label:"Which oil",of:t,at:`${n}/fat`,answers:ea(t),unsaid:"choose ..."})}
            ${f({label:"Oil for 1 g of colour",of:t,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${T({of:t,question:"That oil is",at:`${n}/from`,chosen:i,answers:Fk,puts:a=>a,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var Lk=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function Wk(t,e,n){let o=(i,s,a)=>D({of:t,name:`${e}/${i}`,pointers:[`${e}/${i}`],summary:s,body:a});return r`${Ek(t,e,n)}
    ${ng(t,e,[["lye","The lye"],["batter","The batter"]],!0)}
    ${jk(t,e)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>Bk(t,`${e}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>qu(t,e))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>f({label:"Density",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${ra(t,e,n)}
    </div>`}function Bk(t,e){let n=g(t,e)===!0?"ice":"liquid";return T({of:t,question:"Goes in as ice, which keeps the lye cooler",at:e,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function Ek(t,e,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...pt(t,e,["replaces","rate"]),[s]:""});return r`${T({of:t,question:"How much",at:e,asked_at:`${e}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:Ik,puts:i})}
  ${o==="replaces"?r`<div class="row">
          ${f({label:"Of the formula's water",of:t,at:`${e}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?oa(t,`${e}/rate`,"Rate",na):u}`}var Ik=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function jk(t,e){let n=`${e}/composition`,o=typeof g(t,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(d,c)=>f({label:d,of:t,at:`${n}/${c}`,unit:"%",short:!0});return r`${T({of:t,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?r`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${ju(t,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...ea(t)])}
          <div class="row">
            ${f({label:"Where the figures are from",of:t,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:r`<div class="row">
          ${gt({label:"Built-in figures of",of:t,at:n,answers:Lk.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var it=()=>l.beside.studio!==void 0,ps=({run:t})=>g("run",t),Yu=({studio:t})=>g("studio",t);function ms(t){return ps(t)===void 0&&it()?{of:"studio",at:t.studio}:{of:"run",at:t.run}}var tn=t=>ps(t)??Yu(t),Dt=(t,e)=>f({...e,...ms(t)}),Zu=t=>t===void 0||t===""||t!==null&&typeof t=="object"&&!Object.keys(t).length;function fs(t,e=""){return t===void 0||Zu(t)?[]:t===null||typeof t!="object"||Array.isArray(t)?[[e,t]]:Object.entries(t).flatMap(([n,o])=>fs(o,`${e}/${B(n)}`))}function $n(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/")))$(t,n)!==void 0&&Zu($(t,n))&&(t=P(t,n,void 0));return t}var ai=(t,e)=>e.reduce((n,o)=>$n(P(n,o,void 0),o),t);function rg(t){let e=new Map;return t.flatMap(n=>fs(ps(n)).flatMap(([o,i])=>{let s=n.studio+o,a=e.get(s)??g("studio",s);return Zu(a)||String(a).startsWith("?")||a===i?(e.set(s,i),[[n.run+o,s,i]]):[]}))}async function Xu(t){it()||await yr();let e=rg(t);He([["studio",n=>e.reduce((o,[,i,s])=>P(o,i,s),n)],["run",n=>ai(n,e.map(([o])=>o))]]),q("Kept in the studio")}function qk(t){let e=t.flatMap(o=>fs(Yu(o)).map(([i,s])=>[o.run+i,s]));He([["run",o=>e.reduce((i,[s,a])=>$(i,s)===void 0?P(i,s,a):i,o)]]),q("Said in this run only")}function Hk(t){let e=t.flatMap(n=>fs(ps(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));He([["run",n=>ai(n,e)]]),q("Taken from the studio again")}var sg=t=>fs(t).length>0;function qn(t,e){if(!it())return u;let n=e.some(s=>sg(ps(s))),o=e.some(s=>sg(Yu(s))),i=(s,a)=>r`<button type="button" aria-label="${t}: ${s}" @click=${a}>${s}</button>`;return r`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&rg(e).length?i("Keep in my studio",()=>{Xu(e)}):u}
    ${n&&o?i("As in the studio",()=>Hk(e)):u}
    ${!n&&o?i("Otherwise in this run",()=>qk(e)):u}
  </span>`}function td(t){let e=Object.keys(g("studio","/moulds_owned")??{}),n=l.files?.moulds;return e.find(o=>Vt(o,n)===Vt(t,n))??t}var hs=()=>Object.keys(g("studio","/cups")??{}),gs=()=>hs().length===1?{net:""}:hs().length?{cup:"",net:""}:{holds:"",net:""},ag="\0another";function _s(t,e="Cup holds"){let n=`${t}/holds`,o=hs();if(g("run",n)!==void 0||!o.length)return r`${f({label:e,at:n,unit:"ml",short:!0})}${o.length?Nk(t):u}`;let i=a=>a===ag?W("run","Another cup",t,{...ed(t),holds:""},Z("run",n)):W("run",`Cup: ${a}`,t,{...ed(t),cup:a}),s=a=>A("studio",`/cups/${B(a)}`);return gt({label:"Which cup",at:`${t}/cup`,answers:[...o.map(a=>[a,`${a}, ${s(a)}`]),[ag,"Another cup"]],unsaid:"choose ...",chosen:A("run",`${t}/cup`)||(o.length===1?o[0]:""),take:i})}function ed(t){let{cup:e,holds:n,...o}=g("run",t)??{};return o}var Nk=t=>r`<button type="button" @click=${()=>W("run","A cup of the studio",t,ed(t))}>
    A cup of my studio
  </button>`;function ug(){return it()?r`<div class="row">
    ${hs().map(t=>f({of:"studio",label:`${t} holds`,at:`/cups/${B(t)}`,unit:"ml",short:!0,optional:!0}))}
    ${Uk()}
  </div>`:r`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function Uk(){let t=()=>{let e=document.getElementById("new-cup"),n=e.value.trim()||lg();e.value="",W("studio",`${n} added`,`/cups/${B(n)}`,"",Z("studio",`/cups/${B(n)}`))};return r`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${lg()} />
    </div>
    <button type="button" @click=${t}>Add the cup</button>`}function lg(){for(let t=1;;++t){let e=t===1?"weigh-cup":`weigh-cup ${t}`;if(!hs().includes(e))return e}}var zk=["ice bath","cold water","fridge","room"].map(t=>[t,t==="room"?"the room":t]),nd=t=>({run:`/${t}/temperatures`,studio:`/temperatures/${t}`});function aa(t){let{run:e}=nd(t);return D({name:e,pointers:[e],summary:"How warm",body:()=>r` <p class="hint">
          ${it()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${qn("How warm",[nd(t)])} ${C("run",e)} ${Jk(t)}`})}function Jk(t){let{run:e,studio:n}=nd(t),o=d=>({run:`${e}/${d}`,studio:`${n}/${d}`}),i=l.units==="us"?"\xB0F":"\xB0C",s=(d,c,p=i)=>Dt(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),a=o("cooled_in");return r`<div class="row">
    ${s("room_at","Room and dry alkali")} ${s("water_at","Water")}
    ${s("ice_share","Of the water, as ice","%")} ${s("lye_used_at","Lye when it is used")}
    ${s("fats_at","Fats")} ${s("batter_below","Batter must stay below")}
    ${gt({label:"The lye cools in",...ms(a),answers:zk,unsaid:"not given",optional:!0})}
  </div>`}var se=()=>$(l.run.now,"/pipe")!==void 0;function dg(){let t=e=>{let n=P(e,"/pipe",{formula:"",fills_headspace:"",whip:gs()});return it()?n:P(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};rt("set-up pipe"),oe("run","Topping added",t,H("lane-pipe"))}function Vk(t){let e=Object.keys($(t,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(t,"/batch/whippings")!==void 0&&e?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:P(o,i,void 0),t)}function Kk(){oe("run","Topping removed",Vk,H("topping-back"))}function cg(){let t=l.past.at(-1)?.run?.now;return!t||$(t,"/pipe")===void 0||se()?u:r`<button type="button" id="topping-back" @click=${zi}>Bring the topping back</button>`}function od(){return r`${ex()} ${aa("pipe")}
    <p class="choice"><button type="button" @click=${Kk}>Take the topping away</button></p>`}var Qk=["trials","beads","envelope"];function id(t){return Qk.every(e=>g("run",`/pipe/${e}`)===void 0)&&ne("run","/pipe",`${z("run","/pipe/trials")}-add`,"How large the topping is"),r`<h3>How large is the topping?</h3>
    ${C("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${ie({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:gs()},body:Gk})}
      ${ie({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:Yk})}
    </div>
    ${ie({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:$h,body:()=>wh(t)})}
    ${t?Xk(t):u}`}function Gk(){let t={at:"/pipe/trials/weighed",least:1};return r`<div class="trials">
      ${x(t).map((e,n)=>r`<div class="row" id=${L(t,n)}>
            ${f({label:`Trial ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${N(t,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${Y(t,"One more trial",()=>j(t,"","trial"))}
    <div class="row">
      ${f({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${_s("/pipe/trials/weigh_cup")}
    </div>
    ${C("run","/pipe/trials/weigh_cup")}`}function Yk(){let t="/pipe/envelope",e=g("run",`${t}/form`);return r`${T({question:"Form of the outline",at:`${t}/form`,chosen:e,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${f({label:"Diameter",at:`${t}/diameter`,unit:"mm",short:!0})}
      ${f({label:"Height",at:`${t}/height`,unit:"mm",short:!0})}
      ${f({label:"Share that is soap, not air",at:`${t}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var Zk={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function Xk(t){let e=t.visible_by;if(!e)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:e[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return r`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},a)=>M({key:`pipe.by.${i}`,label:Zk[i],note:o(a),shown:St(l.units,s),of:`pipe.visible_by.${i}_ml`}))}
    ${tx(t)}`}function tx(t){let e=t.visible_by?.suggested_correction;if(!e||l.is_old)return u;let n=S(e.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",s=i&&$(l.run.now,`${o}/correction`)!==e.correction,a=()=>W("run","correction kept",o,{correction:e.correction,trials:e.trials});return r`<p>
      Your hand lays down ${n} times the computed beads (${e.trials}
      ${e.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?r`<button type="button" @click=${a}>Keep ${n} for my tip</button>`:u}`}function sd(t){return r`<h3>The whip planned for</h3>
    <div class="row">
      ${f({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${_s("/pipe/whip")}
    </div>
    ${C("run","/pipe/whip")}
    ${t?.loads?r`<p class="aside of-plan">${t.loads} bag loads.</p>`:u}`}function ex(){let t="/pipe/pace",e=(n,o,i,s=!1)=>f({label:n,at:`${t}/${o}`,unit:i,optional:s,short:!0});return D({name:"pace",pointers:[t],summary:"Piping speed",body:()=>ie({at:t,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>r`<div class="row">
            ${e("Can be piped for","open_time","min")} ${e("To pipe one","time_per_piece","s")}
            ${e("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function nx(t,{at:e,figure:n}){let o=$(t,e),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function $s(t,e,n){return e?r`<button type="button" @click=${()=>n(e.at,nx(t,e))}>It is really so: keep it</button>`:u}var ad=500,ox=()=>$(l.run.now,"/cut")===void 0&&ix()>=ad,ix=()=>l.plan?.pour.brimful_ml??l.measured?.gauge.pockets[0]?.brimful_ml??0,la={run:"/cut/kerf",studio:"/kerf"};function pg(t){rt("set-up cut"),W("run","Cut","/cut",{bar:rd[t],...it()?{}:{kerf:""}},Z("run",`/cut/bar/${Object.keys(rd[t])[0]}`))}function sx(){W("run","Left whole","/cut",void 0,H("cut-into-bars"))}function mg(){return ox()?r`<button type="button" id="cut-into-bars" @click=${()=>pg("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>pg("slab")}>Cut it into bars</button>`:u}var rd={loaf:{thickness:""},slab:{length:"",width:""}};function rx(){let t=g("run","/cut/bar")??{};return"thickness"in t?"loaf":"length"in t||"width"in t?"slab":void 0}var ax={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function fg(){let t=rx(),e=(o,i)=>f({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=A("run","/cut/along");return r` ${T({question:"What is cut?",at:"/cut/bar",chosen:t,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>rd[o]})}
    <div class="row">
      ${t==="loaf"?f({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${t==="slab"?["length","width"].map(o=>f({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${Dt(la,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${e("Off each end","end_trim")} ${e("Off each side","side_trim")}
      ${e("Planed off the top","top_planing")}
      ${e(t==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${qn("Kerf",[la])}</p>
    ${t?T({question:t==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:ax[t],puts:o=>o||void 0}):u}
    <button type="button" @click=${sx}>Leave it whole</button>`}var ua=t=>/^\s*0*[1-9]\d{0,8}\s*$/.test(t)?Number(t):void 0;function da(t,e,n){return r`<div class="field short">
    <label for=${t} data-said="required">Pieces to sell</label>
    <input
      id=${t}
      aria-required="true"
      .value=${F(e)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}function lx({outline:t,above:e}){let n=Math.max(4,(t.right-t.left)*.06),o=e.flat().map(([,m])=>m),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],a=-t.brim-2*n+i,d=a-s-n,c=[t.left-n,d,t.right-t.left+2*n,-t.floor+n-d],p=(m,_)=>R`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return r`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",Ki(e,a))}${p("side",Ki(t.loops))}
    </svg>
  </div>`}function li(t,e=!1,n=[]){let o=n.length?r`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!t)return r`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=t,s=i.pockets[0];return r`${lx(t)}
    <p class="order ${e?"old":""}" role="status">
      Holds
      <b>${O(St(l.units,s.brimful_ml))}</b>${i.pockets.length>1?r` in each of ${i.pockets.length}, ${O(St(l.units,i.total_ml))} together`:u},
      ${O(Tt(l.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?r`<p class="aside">
            ${i.measurements.map(a=>`By ${a.by} ${O(St(l.units,a.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?r`<ul class="limits">
            ${i.notes.map(a=>r`<li>${a.text}</li>`)}
          </ul>`:u}`}var ux={mm:"in",g:"oz","\xB0C":"\xB0F"},dx={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function ca(t,e,n=""){let o=ld(t);if(o)return o.unit??"";let i=Je($(I(),t));return dx[e]?.test(i)?i:n||(l.units==="us"?ux[e]??e:e)}var pa=()=>h({typed:void 0}),ui=t=>`d${t.replaceAll("/","-")}`,ld=t=>l.typed?.key===ui(t)?l.typed:void 0,ma=t=>ld(t)?.text??String($(I(),t)??"");function Hn(t){let{complaint:e}=et();return e&&(e.field===t||e.field.startsWith(`${t}/`))?e.line:void 0}function ud(t,e,n,o){let{pointer:i}=t,s=a=>{let d=a.target.value,c=t.unit?ca(i,t.unit,t.unit_before):"";h({typed:{key:ui(i),text:d,unit:c}}),kt(i,cx(t,d,c))};return r`<input
    id=${ui(i)}
    .value=${F(ma(i))}
    @input=${s}
    @blur=${pa}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${t.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${e??u}
    aria-invalid=${Hn(i)?"true":"false"}
  />`}function cx(t,e,n){if(!((t.optional||t.count)&&!e.trim()))return t.count&&/^\s*\d{1,6}\s*$/.test(e)?Number(e):n&&Ve(e)?`${e.trim()} ${n}`:e}function re(t,e){let n=ui(t.pointer),o=Hn(t.pointer),i=px(t.pointer)??t.hint,s=t.unit?` (${ca(t.pointer,t.unit,t.unit_before)})`:"";return r`<div class="field ${t.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${t.label}${s}</label> ${ud(t,o||i?`${n}-said`:void 0,e)}
    ${ft(n,o,i)}
  </div>`}function px(t){let e=$(I(),t),n=ld(t);if(!(!n?.text.includes("/")||typeof e!="string"||e===n.text))return`taken as ${e}`}function fa(t){let e=t.toLowerCase(),{file:n,shipped:o}=et().open,i=o?"":n;return l.files?.moulds.find(s=>s.file!==i&&s.name.trim().toLowerCase()===e)?.file}async function ws(t){let{open:e}=et();try{if(await Ie(e),e.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));h({files:await zs()})}catch(n){if(!(n instanceof v))throw n;return $u(n)}l.run.file&&(Te(),ut()),t(e.file)}var wn="/shape/points",hg=500,Nn=(t,e)=>[wn,t,...e?[e]:[]].join("/"),gg=t=>Array.from({length:t.least},()=>({}));function _g(t){let e=Zt(I(),wn),n=fx(),{complaint:o}=et(),i=o?.field===wn&&!o.about?o.line:void 0;return r`<h3 id="points-title">Points</h3>
    <p class="hint">${t.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${t.columns.map(s=>r`<span
              >${s.label} (${ca(Nn(-1,s.name),s.unit,$g(t,e.length,s.name))})</span
            >`)}
      </div>
      ${e.map((s,a)=>mx(t,a,n))}
    </div>
    ${i?r`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${e.length>=hg} @click=${()=>ga(t,e.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function mx(t,e,n){let o=n.has(e)?`point ${n.get(e)}`:"empty point",i=hx(e),s=a=>{let{name:d,label:c,unit:p}=t.columns[a],m={label:c,pointer:Nn(e,d),unit:p,unit_before:$g(t,e,d)},_=`${c}, ${n.has(e)?o:`point ${e+1}`}`;return ud(m,i?`point-${e}-said`:void 0,gx(t,e,a),_)};return r`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(e)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>ga(t,e)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>wg(t,e)}>×</button>
    ${i?r`<p id="point-${e}-said" class="complaint">${i}</p>`:u}
  </div>`}function fx(){let t=[...Wi(I()),...ir(I())].sort((e,n)=>e-n);return new Map(t.map((e,n)=>[e,n+1]))}function hx(t){let{complaint:e}=et();return Hn(Nn(t))??(e?.about===Nn(t)?e.line:void 0)}function $g(t,e,n){let o=(i,s)=>Je($(I(),Nn(i,s)));for(let i=e-1;i>=0;--i)if(o(i,n))return o(i,n);return t.columns.map(({name:i})=>o(e,i)).find(Boolean)??""}function ha(t,e){queueMicrotask(()=>document.getElementById(ui(Nn(t,e)))?.focus())}function ga(t,e){let n=[...Zt(I(),wn)];n.length>=hg||(n.splice(e,0,{}),pa(),kt(wn,n),ha(e,t.columns[0].name))}function wg(t,e,n=0){let o=Zt(I(),wn).filter((i,s)=>s!==e);pa(),kt(wn,o.length?o:[{}]),ha(Math.max(0,Math.min(e-(n?1:0),o.length-1)),t.columns[n].name)}function gx(t,e,n){let[o,i]=t.columns.map(({name:s})=>s);return s=>{let a=!ma(Nn(e,o))&&!ma(Nn(e,i));if(s.key==="Enter"&&s.shiftKey)ga(t,e+1);else if(s.key==="Enter"&&n===0)ha(e,i);else if(s.key==="Enter"&&e+1<Zt(I(),wn).length)ha(e+1,o);else if(s.key==="Enter")ga(t,e+1);else if(s.key==="Backspace"&&a&&Zt(I(),wn).length>1)wg(t,e,e>0?1:0);else return;s.preventDefault()}}var dd={weighings:[""]},cd=/\.(3mf|gltf|glb)$/i;function _a(t){let e=Rn(t);return e?{kind:t,points:gg(e)}:{kind:t}}var _x=()=>kt("/water",dd),en=t=>ye(I(),t),bs=()=>Li(I());function bg(t){let{open:e,answer:n,is_old:o}=et();return r`${Ge(e,()=>{ws(t)})} ${Ye(e)}
    ${e.shipped?u:si(l.files?.moulds.find(i=>i.file===e.file))}
    ${en("shape")&&en("mesh")?r`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${en("shape")?at("Shape",bs(),Object.entries(jp),$x):u}
    <div class="beside ${Rn(bs())?"rows":""}">
      <div>
        ${pd()} ${en("shape")?bx():u} ${en("mesh")?yx():u}
        ${md()} ${en("water")?kx():u} ${Tx()}
      </div>
      <div class="stays">${li(n,o,vg())} ${Rx(t)}</div>
    </div>`}function $x(t){let e={...et().shapes,[bs()]:I().shape};y(et(),{shapes:e,answer:void 0}),kt("/shape",e[t]??_a(t))}function wx(){let{shipped:t,file:e}=et().open;return t?l.files?.moulds.find(n=>n.file===e)?.name??e:void 0}function pd(){let t=wx();return re({label:"What you call it",pointer:"/name",wide:!0,hint:t?`${t} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function bx(){let t=bs(),e=Rn(t);return r`${Mo(t).length?r`<div class="row">
          ${Mo(t).map(n=>re({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${e?_g(e):u}`}function md(t=yl(I())){return r`<div class="row">
      ${t?u:re({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${re({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${re({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${re({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var fd=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],hd=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function yx(){let t=o=>String($(I(),`/mesh/${o}`)??""),e=(o,i,s)=>{let a=Hn(`/mesh/${i}`);return r`<h4>${o}</h4>
      ${at(o,t(i),s,d=>kt(`/mesh/${i}`,d||void 0))}
      ${a?r`<p class="complaint">${a}</p>`:u}`},n=Hn("/mesh/file");return r`<h3>Its mesh <small>${t("file")}</small></h3>
    ${n?r`<p class="complaint">${n}</p>`:u}
    ${cd.test(t("file"))&&!t("unit")?u:e("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${e("What it shows","role",fd)} ${e("Which way is up","up",hd)}
    ${t("role")==="body"?vx():u}
    <div class="row">
      ${re({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${re({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function vx(){let t=$(I(),"/mesh/on_board")===!0?"yes":"no";return r`<h4>Open below, and stood on a board?</h4>
    ${at("Stood on a board",t,[["no","No"],["yes","Yes, the board closes it"]],e=>kt("/mesh/on_board",e==="yes"?!0:void 0))}`}function kx(){let t=$(I(),"/water/filled_to"),e=t===void 0?void 0:t==="brim"?"brim":$(t,"/depth")!==void 0?"depth":"below_brim",n=s=>kt("/water/filled_to",s==="brim"?"brim":{[s]:""}),o=$(I(),"/water/weighed_in"),i=e===void 0||e==="brim"?Hn("/water/filled_to"):void 0;return r`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${re({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${at("Filled to",e,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?r`<p class="complaint">${i}</p>`:u}
    ${e==="depth"?re({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${e==="below_brim"?re({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${at("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>kt("/water/weighed_in",s))}
    <div class="row">
      ${Zt(I(),"/water/weighings").map((s,a)=>re({label:`Water, round ${a+1}`,pointer:`/water/weighings/${a}`,unit:"g"},xx(a)))}
    </div>
    ${et().complaint?.field==="/water/weighings"?r`<p class="complaint">${et().complaint.line}</p>`:u}
    <button type="button" @click=${yg}>One more round</button>`}function yg(){let t=Zt(I(),"/water/weighings").length;kt(`/water/weighings/${t}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${t}`)?.focus())}var xx=t=>e=>{e.key==="Enter"&&(t+1===Zt(I(),"/water/weighings").length?yg():document.getElementById(`d-water-weighings-${t+1}`)?.focus())};function Tx(){let t=(e,n)=>r`<button type="button" @click=${n}>${e}</button>`;return r`<div class="choice">
    ${en("shape")?u:t("Add measures, as a check",()=>kt("/shape",_a("block")))}
    ${en("shape")&&en("mesh")?t("Leave the measures out",()=>kt("/shape",void 0)):u}
    ${en("water")?t("Leave the water out",()=>kt("/water",void 0)):t("Add weighed water",_x)}
  </div>`}function vg(){let t=ir(I()).length;return t?[...Bi(I()),t===1?"the other number of a point":`the other numbers of ${t} points`]:Bi(I())}function Rx(t){let e=String(I().name??"").trim(),n=fa(e),{open:o,answer:i,is_old:s,complaint:a}=et(),d=i&&!s&&!a&&!vg().length&&e&&!n,c=o.shipped?"":o.file;return r`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{ws(t)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?r`<p class="aside">It stays in ${c}.</p>`:u}
    ${e?u:r`<p class="hint">Give it a name first.</p>`} ${gd(e,n)}
    ${a?r`<p class="alarm" role="status">${Sx(a.field)}${a.line}</p>
            ${$s(I(),a.keep,kt)}`:u}`}var gd=(t,e)=>e?r`<p class="complaint" role="status">
        Another mould is called ${t} already (${e}); give this one a name of its own.
      </p>`:u;function Sx(t){let[,e]=/^\/shape\/points\/(\d+)/.exec(t)??[];if(e)return`Point ${Number(e)+1}: `;if(t==="/shape/points")return"";let n=Mo(bs()).find(({name:s})=>t===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${t.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:t?`${t.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var Ax=200*2**20;async function kg(t){if(!t)return;let e={name:t.name,share:0,sizes:[],is_measuring:!1,questions:0};if(h({mesh:e}),kt("/name",t.name.replace(/\.\w+$/,"")),t.size>Ax){let n=`${t.name} has ${Math.ceil(t.size/1048576)} MiB`;return y(e,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await ip(t,o=>y(e,{share:o}));y(e,{share:1,upload:n.file}),await Tg(e)}catch(n){y(e,{complaint:n instanceof v?n.message:String(n)})}}async function Tg(t){let e=t.questions+1;y(t,{questions:e,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:s}=t;try{let a=await Go({file:n,unit:o,role:i,up:s});e===t.questions&&y(t,{answer:a,is_measuring:!1})}catch(a){if(!(a instanceof v))throw a;if(e!==t.questions)return;let d=o?t.sizes:Mx(a.complaint),c=d.length&&!o?void 0:Q(a.complaint);y(t,{sizes:d,complaint:c,is_measuring:!1})}}async function Dx(t){let{questions:e,upload:n,unit:o,up:i}=t;try{let s=await Xc({file:n,unit:o,up:i});e===t.questions&&y(t,{inspection:s})}catch(s){if(!(s instanceof v))throw s;e===t.questions&&y(t,{complaint:Q(s.complaint)})}}function Px(t){return t.inspection?r`<h4>Every defect of the mesh</h4>
    ${t.inspection.defects.length?r`<ul>
            ${t.inspection.defects.map(Ox)}
          </ul>`:r`<p>None.</p>`}`:r`<button type="button" @click=${()=>{Dx(t)}}>List every defect of the mesh</button>`}var Ox=({text:t})=>r`<li>${t}</li>`;function Mx({asks:t,choices:e=[]}){if(t!=="unit")return[];let n=o=>(o??[]).map(i=>S(i,2)).join(" \xD7 ");return e.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function _d(t,e){y(t,e),Tg(t)}function Rg(t,e){let n=a=>{let d=a.target;kg(d.files?.[0]),d.value=""},o=a=>{a.preventDefault(),kg(a.dataTransfer?.files[0])},[i,s]=l.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return r` <div class="drop" @dragover=${a=>a.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${s} @change=${n} />
    </div>
    ${l.mesh?Fx(l.mesh,t,e):u}`}function Fx(t,e,n){let i=(t.sizes.length?t.sizes:[["mm",""],["cm",""],["in",""]]).map(([s,a])=>[s,a?`${s}: ${a} ${s}`:s]);return r` <h3>${t.name}</h3>
    ${t.share<1&&!t.complaint?r`<label for="sent">Sending, ${Math.round(100*t.share)} %</label
            ><progress id="sent" max="1" .value=${t.share}></progress>`:u}
    ${t.is_measuring?r`<p role="status">Measuring ...</p>`:u}
    ${t.upload&&!cd.test(t.name)?r`<h4 id="unit-title">${t.unit?"Its unit":"Which size is it?"}</h4>
            ${at("Unit of the file's numbers",t.unit,i,s=>_d(t,{unit:s}))}`:u}
    ${t.complaint?r`<p class="alarm" role="alert">${t.complaint}</p>`:u}
    ${t.upload&&!t.is_measuring&&(t.complaint||t.answer)?Px(t):u}
    ${t.upload&&(t.unit||t.answer)?r`<h4>What it shows</h4>
            ${at("Role",t.role??t.answer?.gauge.role,fd,s=>_d(t,{role:s}))}
            <h4>Which way is up</h4>
            ${at("Up",t.up??"",hd,s=>_d(t,{up:s||void 0}))}`:u}
    ${t.answer?r`${li(t.answer)} ${Cx(t,e,n)}`:u}`}var Sg=t=>t.answer.gauge.role!=="cavity"||t.answer.gauge.pockets.length>1;function Cx(t,e,n){let o=String(I().name??"").trim(),i=fa(o),s=o&&!i&&!t.is_keeping;return r`${pd()} ${md(Sg(t))} ${gd(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${()=>xg(t,n,e)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${t.is_keeping} @click=${()=>xg(t,n)}>More settings</button>
    </div>
    ${t.is_keeping?r`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function xg(t,e,n){y(t,{is_keeping:!0});try{let o=Lx(t,await sp(t.upload,Bx(t.name)));if(!n||t.answer.gauge.pockets.length>1&&!await Wx(o))return e(o);Zo(o,"mesh",et().title),await ws(n),y(t,{complaint:l.mould?.complaint?.line})}catch(o){y(t,{complaint:o instanceof v?o.message:String(o)})}y(t,{is_keeping:!1})}function Lx(t,e){let n={file:e,role:t.answer.gauge.role};t.unit&&(n.unit=t.unit),t.up&&(n.up=t.up);let{cavities:o,...i}=I();return{...i,...Sg(t)||o===void 0?{}:{cavities:o},mesh:n}}async function Wx(t){try{return await xn({file:"new.mould.json",mould:t}),!0}catch(e){if(e instanceof v&&e.status===422)return!1;throw e}}var Bx=t=>Fo(t.replaceAll(/[^\w.-]+/g,"_"),l.files?.meshes??[]);var $a={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},Ag={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function Dg(t){Ue();let e={...Ag,shape:_a("block")};t==="mesh"?Zo(Ag,"mesh",$a[t]):Zo(t==="water"?{...e,water:dd}:e,"form",$a[t]),ba()}async function Pg(t,e){Ue(),await Mf(t,e),ba()}async function wa(t){Ue(),await Ff(t),ba()}function Ex(t){Zo(t,"form","More about this mould"),ba()}function ba(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function Og(t){if(!l.mould)return;let{way:e,title:n}=l.mould;return r`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${e==="mesh"?Rg(t,Ex):bg(t)}
  </section>`}var $d=()=>h({chosen_mould:void 0});function ys(t,e){let n=l.files?.moulds.find(s=>s.file===t),o=l.catalogue.find(s=>s.path===t),i={file:t,name:n?.name||o?.name||t,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:e};h({chosen_mould:i}),Ix(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function Ix(t){try{y(t,{answer:await Go({file:t.file})})}catch(e){y(t,{complaint:e instanceof v?e.message:String(e)})}}var jx=t=>l.files?.moulds.find(e=>e.file===t);function Mg(t,e){let n=()=>e(async()=>{await Pg(t.file,t.shipped),$d()});return r`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${t.name} <small>${t.shipped?"built-in":`your own, ${t.file}`}</small>
    </h2>
    ${t.told?r`<p role="status">${t.told}</p>`:u} ${t.note?r`<p>${t.note}</p>`:u}
    ${Qr(jx(t.file))}
    ${t.complaint?r`<p class="alarm" role="alert">It cannot be measured: ${t.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${t.answer?li(t.answer):t.complaint?u:r`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${t.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${t.complaint?u:Nx(t,e)}
    </div>
  </section>`}var Fg=({answer:t})=>(t?.gauge.pockets[0]?.brimful_ml??0)>=ad;function qx(t){let e=Fg(t)?t.slice.trim():"";return Ve(e)?`${e} mm`:e||void 0}var Hx=t=>r`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${F(t.slice)}
      @input=${e=>y(t,{slice:e.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function Nx(t,e){let n=ua(t.sell),o=qx(t),i=s=>()=>e(()=>Dr({mould:t.file,name:t.name,formula:s,sell:n,slice:o}));return r`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${da("mould-sell",t.sell,s=>y(t,{sell:s}))}
      ${Fg(t)?Hx(t):u}
    </div>
    ${n?u:r`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(l.files?.formulas??[]).map(s=>r`<li>
            <button type="button" ?disabled=${!t.answer||!n} @click=${i(s.file)}>
              <b>${s.name}</b><span>${s.note||s.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function vs(){let{view:t,run:e,order:n,formula_of:o,formulas:i,mould:s,chosen_mould:a}=l;if(t!=="reading")return sn(t)?{name:t,file:e.file,of:e}:t==="moulds"&&s?{name:"describing",file:s.open.id,of:s}:t==="moulds"&&a?{name:"chosen",file:a.file,of:a}:t==="order"?{name:t,file:n?.open.file,of:n}:t!=="formula"?{name:t}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:Di[o],file:e.file,of:e}}async function Lg({name:t,file:e}){if(!(!(t===Di.apart&&l.formulas.apart?.file===e)&&!await Pr()))try{await Ux(t,e)}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o;h({view:"runs",list_complaint:o.message})}}async function Ux(t,e=""){let n=t;if(sn(n))return Cg(e,n);let o=["pour","pipe"].find(i=>Di[i]===t);if(o){await Cg(e,"formula"),l.view==="formula"&&Kt(o);return}if(t===Di.apart)return es(e);if(t==="order")return ns(e);await zx(t,e)}async function Cg(t,e){t===l.run.file||!t?h({view:l.run.file?e:"runs",typed:void 0}):await Ne(t,e)}async function zx(t,e){let n=t;$d(),Ue(),h({view:ue(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=pr(Jt).find(i=>i.id===e);t==="describing"&&o&&await wa(o),t==="chosen"&&ys(e),Jx()}async function Jx(){try{await pe(),Rr()}catch(t){if(!(t instanceof v))throw t;h({list_complaint:t.message})}}var ae={id:""},jt,wd=!1,yd=new Map,ya=JSON.parse(sessionStorage.getItem("left")??"{}");function Bg(){let t=vs();wd||!t||jt&&We(jt)===We(t)||(va(),Eg(t))}function Eg(t){let e=!jt||jt.name===t.name&&jt.of!==void 0&&jt.of===t.of;if(jt=t,e)return di();ae={id:crypto.randomUUID(),before:location.hash},yd.set(ae.id,t.of),history.pushState(ae,"",We(t)),requestAnimationFrame(Kx)}function di(){jt&&(ae.id||(ae={id:crypto.randomUUID()}),yd.set(ae.id,jt.of),history.replaceState(ae,"",We(jt)))}var Vx="button, input, select, summary, a[href], [tabindex]",bd=t=>t.id||(t.getAttribute("aria-label")??t.textContent).trim(),Ig=t=>[...document.querySelectorAll(`#main :is(${Vx})`)].filter(e=>bd(e)===t);function va(){let t=document.activeElement;!t?.closest("#main")||t.id==="main"?ya[ae.id]={scroll:scrollY}:ya[ae.id]={scroll:scrollY,words:bd(t),nth:Ig(bd(t)).indexOf(t)}}function Kx(){scrollTo(0,0),document.activeElement?.closest("#main")||jg()}function jg(){let t=document.querySelector("#main h1");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}))}function qg(){let{scroll:t,words:e,nth:n=0}=ya[ae.id]??{scroll:0},o=e===void 0?void 0:Ig(e)[n];o?o.focus({preventScroll:!0}):jg(),scrollTo(0,t)}var bn=t=>Hg({name:t,file:sn(t)?l.run.file:void 0});async function Hg(t){va(),await vd(t,()=>{let e=vs();e&&!(jt&&We(jt)===We(e))&&Eg(e)})}async function vd(t,e){wd=!0;try{await Lg(t)}finally{wd=!1,e()}}function Ng(t){ae.before===We(t)?history.back():Hg(t)}var Wg=Promise.resolve();function Qx(t,e){va();let n=()=>history.state?.id!==t?.id;Wg=Wg.then(async()=>{if(!e)return di();if(n())return;let o=t?yd.get(t.id):void 0,i=[l.run,l.formulas.apart,l.order].find(s=>s&&s===o);await vd(i?{...e,file:"open"in i?i.open.file:i.file}:e,()=>{jt=vs(),!n()&&(ae=t??{id:crypto.randomUUID()},di(),requestAnimationFrame(qg))})})}function Ug(){history.scrollRestoration="manual",addEventListener("popstate",t=>{Ic()||Qx(t.state,al(location.hash))}),addEventListener("pagehide",()=>{va(),sessionStorage.setItem("left",JSON.stringify(ya))})}async function zg(){let t=al(location.hash);t&&(ae=history.state??{id:""}),await Tf(lp(t)),t&&Gx(t)&&await vd(t,()=>{jt=vs(),di(),requestAnimationFrame(qg)}),await Rf()}var Gx=t=>!jt||We(jt)===We(t);function ci(t=l.plan?"The figures below are out of date.":"No figures yet."){let e=sa()?void 0:l.complaint;return r`<div class="complaints" role="status">
      ${e?r`<p class="alarm">
                <strong>${t}</strong>
                ${yn(e.field)}${Q(e)}
              </p>
              ${e.is_fault?r`<button type="button" @click=${xd}>Ask again</button>`:u}
              ${he("run")?$s(l.run.now,e.keep,(n,o)=>V("run",n,o)):kd(e)}
              ${Yx()?r`<button type="button" @click=${Td}>Go to the field</button>`:u}`:u}
    </div>
    ${cs()}`}function kd({keep:t}){let{studio:e}=l.beside;return e&&he("studio")?$s(e.now,t,(n,o)=>V("studio",n,o)):u}function yn(t){let e=t.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return e.length?`${e.join("").slice(2)}: `:""}function xd(){ut(),l.run.failed&&je()}function Yx(){if(Jg())return!0;let t=Ke();return t?document.activeElement!==t:Zx()}var Zx=()=>l.view!=="set-up"&&he("run")&&l.complaint!==void 0&&l.complaint.field!=="",Jg=()=>["pour","pipe"].find(t=>l.complaint?.file&&l.complaint.field&&he(t));function Td(){let t=Ke(),e=Jg();if(t)return Nt(t);e?Kt(e):bn("set-up"),Xx(()=>Nt(Ke()))}function Xx(t){requestAnimationFrame(()=>requestAnimationFrame(t))}var Vg=()=>[...dr().map(t=>Ge(t)),...ur().map(Ye)];function Kg(){let t=l.formula_of,e=l.formulas[t];if(!e)return r`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${Vg()}${ci()}
      <p>Reading the formula ...</p>
      ${Sd(t)}`;let n=l.plan&&ii(l.plan),o=t==="pipe"?n?.whippings[0]:n?.pour;return r`${Vg()}
    <h1 id="formula-title" tabindex="-1">${String(e.now.name||"Unnamed formula")}</h1>
    <p class="aside">${tT(t)}</p>
    <div class="choice">${Sd(t)}${t==="apart"?eT():u}</div>
    ${si(l.files?.formulas.find(i=>i.file===e.file))} ${nT(t,o,n)} ${Gg(t)}
    ${zu(t)} ${Ju(t,o)} ${Ku(t)} ${Iu(t)}
    <div class="choice">${Sd(t)}</div>`}var Qg=t=>[Gg(t),zu(t),Ju(t,void 0),Ku(t),Iu(t)],Rd=()=>String(l.run.now.name??l.run.file);function tT(t){let e=l.formulas[t],n=e.shipped?" Built-in: your first change is saved as a copy.":"",o=l.formulas.pour===e&&l.formulas.pipe===e;return t==="apart"?`Opened on its own; the figures are for a base of "${Rd()}".${n}`:o?`Base and topping of "${Rd()}" are both made of it.${n}`:`${t==="pour"?"Base":"Topping"} of "${Rd()}".${n}`}function Sd(t){let e=t==="apart";return r`<button type="button" class="strong" @click=${()=>Ng(e?{name:"formulas"}:{name:l.came_from,file:l.run.file})}>
    ${e?"Close the formula":"Back to the run"}
  </button>`}function eT(){return r`<button type="button" @click=${()=>{pu("pour")}}>Use it as the base</button> ${se()?r`<button type="button" @click=${()=>{pu("pipe")}}>Use it as the topping</button>`:u}`}function nT(t,e,n){return r`<section class="strip" aria-label="What comes of it">
    ${e&&n?r`<dl>
            ${[...oT(t,n),...iT(t,e)].map(([o,i,s])=>r`<div class=${l.is_old?"old":""}>
                  <dt>${o} ${s?In(s):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${sT(t)}
  </section>`}function oT(t,e){let n=t==="pipe"?Fu(e,e.whippings[0]):"";return n?[["For one whipping",n]]:It(e.whole)?[["For one batch",Ze(e.whole,e.batch)]]:[]}function iT(t,e){let n=Wn(t).length?" \u26A0":"";return[["Fats",O(E(l.units,e.fats_g))],["Superfat as weighed",`${me(e.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...ta(e).map(({one:o})=>[o.name,O(yo(l.units,o))])]}function sT(t){let e=sa()?void 0:l.complaint;if(!e)return r`<div role="status"></div>
      ${cs()}`;let n=he(t),o=n&&e.field!==""&&document.activeElement!==Ke();return r`<div role="status" class="asks">
      <p class="alarm">
        <strong>${l.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${yn(e.field)}${Q(e)}
      </p>
      ${e.is_fault?r`<button type="button" @click=${xd}>Ask again</button>`:u}
      ${o?r`<button type="button" @click=${()=>Ke()?.focus()}>Go to the field</button>`:u}
    </div>
    ${cs()}`}function Gg(t){return r`<section class="card" aria-label="Name">
    ${f({label:"Name",of:t,at:"/name",wide:!0})}
    ${D({of:t,name:"note",pointers:["/note"],summary:"Your note",body:()=>f({label:"Note",of:t,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Ad=t=>y(l.new_formula,t);function Yg(){let{name:t,copied:e}=l.new_formula,n=[...l.files?.formulas??[]].sort((i,s)=>Number(i.shipped)-Number(s.shipped)),o=i=>()=>lt(async()=>{await i(t.trim()),Ad({name:"",copied:""})});return r`${_e("Formulas")}
    <section aria-label="Formulas">
      ${Me(n,rT)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${F(t)}
            @input=${i=>Ad({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t.trim()} @click=${o(Af)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>Ad({copied:i.target.value})}
          >
            <option value="" .selected=${F(e==="")}>choose ...</option>
            ${n.map(i=>r`<option value=${i.file} .selected=${F(i.file===e)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!t.trim()||!e}
          @click=${o(i=>Df(e,i))}
        >
          Make the copy
        </button>
      </div>
      ${t.trim()?"":r`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${$e("formula")}`}function rT(t){let e=t.changed?[`changed ${bt(t.changed)}`]:[];return Xe({kind:Co,one:t,facts:e,open:()=>es(t.file)})}function aT(t){Ue(),ys(t,`Saved in ${t}.`)}function Zg(){let{chosen_mould:t}=l;return r`${_e("Moulds")}
  ${t?Mg(t,lt):Og(aT)??r`${cT()} ${lT()}`}`}function lT(){let t=(l.files?.moulds??[]).filter(n=>!n.shipped),e=l.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return r`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Me([...t,...e],uT)} ${$e("mould")}
  </section>`}function uT(t){let e=t.shipped?dT(t.file):fT(t.file),n=()=>Promise.resolve(ys(t.file));return Xe({kind:Jt,one:t,facts:e,picture:t.file,open:n})}var dT=t=>l.catalogue.filter(e=>e.path===t).map(e=>`${O(St(l.units,e.brimful_ml))}, ${K(e.cavities,"cavity","cavities")}; ${e.description}`);function cT(){return r`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${pT()}
    <div class="choice">
      ${Object.entries($a).map(([t,e])=>r`<button type="button" @click=${()=>Dg(t)}>${e}</button>`)}
    </div>
  </section>`}function pT(){return pr(Jt).map(t=>{let e=String($t(t.text)?.name??"").trim()||mT(t)||"a mould without a name yet";return r`<div class="banner">
      <p>Your unsaved mould <b>${e}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>lt(()=>wa(t))}>Continue</button>
        <button type="button" @click=${()=>{An(Jt,t.id),nt()}}>Discard it</button>
      </div>
    </div>`})}var mT=({file:t})=>l.files?.moulds.find(e=>e.file===t)?.name;function fT(t){let e=uf(t);return e?"complaint"in e?[`it cannot be measured: ${e.complaint}`]:[O(St(l.units,e.brimful_ml)),K(e.cavities,"cavity","cavities")]:["measuring ..."]}var hT=300,gT=1e3;function ka(){let{quoted:t,plan:e,quote_wish:n,is_old:o}=l,i=t?.of===e&&t?.wish===n;!i&&!o&&_T();let s=i?t?.complaint:void 0;return{quote:t?.quote,complaint:s,is_old:o||!i||s!==void 0}}function Pd(){l.quoted&&h({quoted:{...l.quoted,of:void 0}})}var ks,Dd=!1;function _T(){let{plan:t,quote_wish:e}=l;Dd||ks?.of===t&&ks?.wish===e||(window.clearTimeout(ks?.timer),ks={of:t,wish:e,timer:window.setTimeout(()=>{wT()},l.quoted?hT:0)})}var xa=t=>t.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function Xg(t,{numbers:e="",by:n,figure:o}){let i=xa(e);return{...t,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var Ta=()=>Xg({file:l.run.file,run:l.run.now},l.quote_wish);function $T(t,{numbers:e=""}){return t.field==="/sell"&&xa(e)?{...t,file:"",field:"sell"}:t}async function wT(){ks=void 0;let{run:t,plan:e,planned:n,quote_wish:o,is_old:i}=l;if(!(!e||!n||i)){Dd=!0;try{let s=await Gc(Xg(n,o));t===l.run&&h({quoted:{of:e,wish:o,quote:s}})}catch(s){if(!(s instanceof v))throw s;if(t!==l.run)return;let a=$T(s.complaint,o);h({quoted:{of:e,wish:o,quote:l.quoted?.quote,complaint:a}}),s.may_pass&&window.setTimeout(Pd,gT)}finally{Dd=!1}}}var bT=300,yT=1e3,Md=t=>{let{by:e,figure:n}=l.quote_wish;return[t.open.now,t.open.file,t.times,e,n,l.plan,co()]},t_=(t,e)=>t!==void 0&&t.every((n,o)=>n===e[o]);function e_(){let t=Lt(),{quoted:e}=t;if(!pn(t.open.now)||t.open.theirs)return{is_old:!0};let n=t_(e?.of,Md(t));!n&&!l.is_old&&vT(t);let o=n?e?.complaint:void 0;return{quote:e?.quote,complaint:o,is_old:l.is_old||!n||o!==void 0}}function Fd(){let{quoted:t}=Lt();t&&y(Lt(),{quoted:{...t,of:[]}})}function Cd({open:t,times:e}){let{by:n,figure:o}=l.quote_wish,i=xa(e);return{file:t.file,order:t.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var Ra,Od=!1;function vT(t){let e=Md(t);Od||t_(Ra?.of,e)||(window.clearTimeout(Ra?.timer),Ra={of:e,timer:window.setTimeout(()=>{kT(t)},t.quoted?bT:0)})}async function kT(t){if(Ra=void 0,t===l.order){Od=!0;try{if(await qe(),await dn(),await Io(),!pn(t.open.now))return;let e=Md(t);await xT(t,e)}catch(e){if(!(e instanceof v))throw e}finally{Od=!1,y(t,{})}}}async function xT(t,e){try{y(t,{quoted:{of:e,quote:await Yc(Cd(t))}})}catch(n){if(!(n instanceof v))throw n;y(t,{quoted:{of:e,quote:t.quoted?.quote,complaint:n.complaint}}),n.may_pass&&window.setTimeout(()=>t===l.order&&Fd(),yT)}}var pi={of:"order",at:"/lines",in_order:!0,stays:!0};function n_(){return r`<section class="card" aria-label="The order">
    <div class="row">
      ${f({of:"order",label:"For",at:"/for",optional:!0})}
      ${f({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${f({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${C("order","/lines")} ${x(pi).map((t,e)=>TT(e))} ${RT()}
  </section>`}var o_=()=>(l.files?.runs??[]).filter(({shipped:t})=>!t);function i_(t){let e=ln(Lt().open.file,t);return l.files?.runs.find(n=>n.file===e)}var s_=t=>i_(t)?.name||t;function r_(t){let e=Pn(Lt().open.now).map(({run:n})=>n);return o_().filter(({file:n})=>n===t||!e.includes(n)).map(n=>[n.file,n.name||n.file])}function TT(t){let{run:e}=Pn(Lt().open.now)[t]??{run:""},n=`/lines/${t}`,o=i_(e)?.pieces,i=e?s_(e):`line ${t+1}`;return r`<div class="row" id=${L(pi,t)} role="group" aria-label=${i}>
    ${gt({of:"order",label:"Run",at:`${n}/run`,answers:r_(e),unsaid:"choose ..."})}
    ${f({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${K(o,"piece")}`})}
    ${x(pi).length>1?f({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):u}
    ${N(pi,t,i)}
  </div>`}function RT(){let t=r_();return o_().length?t.length?r`<div class="row">
    ${gt({of:"order",label:x(pi).length?"Another run":"The run that is ordered",at:"/lines/-",answers:t,unsaid:"choose ...",optional:!0,chosen:"",take:e=>e&&j(pi,{run:e},s_(e))})}
  </div>`:r`${u}`:r`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}var ST=300,AT=1e3,a_=()=>new Date().toDateString(),DT=()=>({file:l.run.file,run:l.run.now});function PT(){let{run:t,plan:e}=l;return{known:l.run_days,rests_on:()=>[l.plan,a_()],is_ready:e!==void 0&&!l.is_old,written:()=>Promise.resolve(),question:()=>l.planned??DT(),is_open:()=>t===l.run,keep:n=>h({run_days:n})}}function OT(){let{order:t}=l;if(!t)return;let{open:e}=t;return{known:t.days,rests_on:()=>[e.now,e.file,l.plan,co(),a_()],is_ready:pn(e.now)&&!e.theirs&&!l.is_old,written:async()=>{await qe(),await dn(),await Io()},question:()=>({file:e.file,order:e.now}),is_open:()=>t===l.order,keep:n=>y(t,{days:n})}}var Sa=t=>t==="run"?PT():OT(),l_=t=>Sa(t).question(),u_=(t,e)=>t!==void 0&&t.length===e.length&&t.every((n,o)=>n===e[o]);function Aa(t){let e=Sa(t);if(!e)return{is_old:!0};let{known:n,is_ready:o}=e,i=u_(n?.of,e.rests_on());!i&&o&&MT(t,e);let s=i?n?.complaint:void 0;return{days:n?.days,complaint:s,is_old:!o||!i||s!==void 0}}function Bd(t){let e=Sa(t);e?.known&&e.keep({...e.known,of:[]})}var Ld=new Map,Wd=new Set;function MT(t,e){let n=e.rests_on(),o=Ld.get(t);Wd.has(t)||u_(o?.of,n)||(window.clearTimeout(o?.timer),Ld.set(t,{of:n,timer:window.setTimeout(()=>{FT(t)},e.known?ST:0)}))}async function FT(t){Ld.delete(t);let e=Sa(t);if(e?.is_ready){Wd.add(t);try{await e.written(),await CT(t,e)}catch(n){if(!(n instanceof v))throw n}finally{Wd.delete(t),h({})}}}async function CT(t,{known:e,rests_on:n,question:o,is_open:i,keep:s}){let a=n();try{let d=await Zc(o());i()&&s({of:a,days:d})}catch(d){if(!(d instanceof v))throw d;if(!i())return;s({of:a,days:e?.days,complaint:d.complaint}),d.may_pass&&window.setTimeout(()=>i()&&Bd(t),AT)}}var Hd=864e5,Un=t=>Math.round(Date.parse(`${t}T00:00Z`)/Hd),d_=t=>new Date(t*Hd).toISOString().slice(0,10),LT=t=>new Date(t*Hd).getUTCDay()===1,Id=40,jd=18,WT=7,qd=class{#n;#t;constructor({calendar:e}){this.#n=Un(e[0].day),this.#t=e.length}at=(e,n=0)=>`${this.#e(Un(e)+n)}%`;wide=e=>`${(100*e/this.#t).toFixed(3)}%`;#e=e=>(100*(e-this.#n)/this.#t).toFixed(3);mondays(){let e=Array.from({length:this.#t},(n,o)=>this.#n+o).filter(LT);return e.filter((n,o)=>o%Math.ceil(e.length/WT)===0).map(d_)}is_at_end=e=>Un(e)-this.#n>.88*this.#t};function c_(t){let e=new qd(t),{calendar:n}=t;return r`<figure class="day-strip">
    <p class="aside">${At(n[0].day)} to ${At(n.at(-1).day)}</p>
    ${Ed(t,e,20,jT(e))}
    <p>Hours of your making days</p>
    ${Ed(t,e,Id+2,qT(t,e))}
    ${t.batches.map(o=>r`<p>${zT(t,o)}</p>
          ${Ed(t,e,jd+6,HT(t,e,o))}`)}
    <figcaption>${VT(t)}</figcaption>
  </figure>`}var Ed=(t,e,n,o)=>r`<svg width="100%" height=${n} aria-hidden="true">
    ${R`${BT} ${IT(t,e)}
      ${e.mondays().map(i=>R`<line class="week" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${ET(t).map(i=>R`<line class="due" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,BT=R`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,ET=({days:t})=>t.filter(({acts:e})=>e.some(({act:n})=>n==="due")).map(({day:e})=>e),IT=({calendar:t},e)=>t.filter(({off:n})=>n).map(({day:n})=>R`<rect class="off" x=${e.at(n)} width=${e.wide(1)} height="100%" />`),jT=t=>t.mondays().filter(e=>!t.is_at_end(e)).map((e,n)=>R`<text class=${n%2?"between":""} x=${t.at(e)} dx="3" y="14">${oh(e)}</text>`);function qT({calendar:t},e){let n=Math.max(...t.map(({hours_min:i})=>i)),o=(i,s,a)=>{let d=Id*a/n;return R`<rect class=${i} x=${e.at(s,.1)} width=${e.wide(.8)} y=${1+Id-d} height=${d} />`};return t.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:s,used_min:a})=>R`${o("free",i,s)} ${o("used",i,a)}`)}function HT(t,e,n){let{poured:o,unmoulded:i,cured:s}=n,a=(p,m,_)=>{let w=Un(_)-Un(m);return R`<rect class=${p} x=${e.at(m)} y="3" width=${e.wide(w)} height=${jd} />`},d=o===i,c=(p,m)=>UT(t,p,n).map(_=>R`<circle class=${p} cx=${e.at(_,.5)} cy=${3+jd/2} r=${m} />`);return R`${a("mould",o,d?d_(Un(o)+1):i)}
    ${Un(i)<Un(s)?a("cure",i,s):u}
    ${c("chill",7)} ${c("cast",3.5)}`}var NT=({of:t,runs:e,batches:n},o)=>t===o.of&&e.join()===o.runs.join()&&n.includes(o.batch),UT=({days:t},e,n)=>t.filter(({acts:o})=>o.some(i=>i.act===e&&NT(i,n))).map(({day:o})=>o);function zT({asked:t,batches:e},n){let o=({of:a,runs:d})=>a===n.of&&d.join()===n.runs.join(),i=t[n.of].lines.find(({runs:a})=>a.join()===n.runs.join())?.name??"",s=e.filter(o).length;return`${i}${s>1?`, batch ${n.batch} of ${s}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var JT=(t,e)=>r`<span><svg width="26" height="20" aria-hidden="true">${t}</svg> ${e}</span>`,xs=t=>R`<rect class=${t} x="1" y="1" width="24" height="18" />`;function VT({calendar:t,days:e}){let n=i=>e.some(({acts:s})=>s.some(({act:a})=>a===i));return[[!0,xs("used"),"hours used"],[!0,xs("free"),"hours free"],[!0,xs("mould"),"in the mould"],[!0,xs("cure"),"curing"],[t.some(({off:i})=>i),xs("off"),"day off"],[n("cast"),R`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),R`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out and set to chill"],[!0,R`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,s])=>JT(i,s))}var vo=t=>y(l.printing,t);function p_(t,e){let n=document.createElement("a");n.href=t,e(n),n.click()}async function m_(t){if(!l.printing.is_working){vo({is_working:!0,told:"Making it ...",on:l.view});try{await KT(),vo({told:await t()})}catch(e){vo({told:e instanceof Error?e.message:String(e)})}vo({is_working:!1})}}async function KT(){await qe(),await dn();let t=l.view==="order"?l.order?.open:void 0,e=un("run")??(t?.theirs&&t);if(e)throw new Error(`${e.file} was changed outside this page: choose first which version to keep.`)}var zn=()=>l.printing.on===l.view?l.printing.told:"",Qt=(t,e)=>()=>m_(async()=>{let n=URL.createObjectURL(await Le(e));return p_(n,o=>o.download=t),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${t} is in your downloads.`}),QT=t=>()=>m_(async()=>(p_(await op(t),e=>Object.assign(e,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),GT=t=>{vo({paper:t}),localStorage.setItem("paper",t)},Da=()=>at("Paper",l.printing.paper,[["A4","A4"],["Letter","Letter"]],GT),Ut=(t,e,n="",o=!1)=>r`<button
    type="button"
    class=${n}
    ?disabled=${l.printing.is_working||o}
    @click=${()=>{e()}}
  >
    ${t}
  </button>`,nn=({words:t,kind:e,file:n,of:o,is_asleep:i},s="")=>r`${Ut(`${t}, to print`,QT({kind:e,...o}),s,i)}
  ${l.files?.makes_pdf?Ut(`${t}, PDF`,Qt(`${n}.pdf`,{kind:`${e}-pdf`,...o}),"",i):""}`,Jn=t=>t.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var on={run:"/money/currency",studio:"/currency"},Pa={run:"/money/prices",studio:"/prices"},Fe=()=>tn(on)!==void 0;function mi(){let[t,e]=[g("run",on.run),g("studio",on.studio)];return t!==void 0&&e!==void 0&&t!==e?[]:[on,Pa]}var Oa=()=>A("studio",on.studio)||String(tn(on)??"");async function f_(t,e=""){if(t==="run"||!l.order)return;let{open:n}=l.order,o=Pn(n.now).map(({run:s})=>ln(n.file,s)),i=o.find(s=>Ma(s,e))??o[0];(!o.includes(l.run.file)||o.some(s=>Ma(s,e)))&&await Ne(i,"set-up")}var Ma=(t,e)=>t!==""&&(t===e||e.endsWith(`/${t}`)),h_=t=>{requestAnimationFrame(()=>requestAnimationFrame(t))};function Ts(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(z(t,n));if(o)return o}}var g_=(t,e)=>{rt("set-up studio"),Et("studio",t),bn("set-up"),h_(()=>Nt(Ts("studio",e)))};async function __(t){await f_(t),it()||await yr(),g_("days","/days/making/monday")}var YT=["order","run","pour","pipe","studio"];async function Nd(t,{file:e,field:n}){if(t==="order"&&Ma(l.order.open.file,e))return Nt(Ts("order",n));await f_(t,e);let o=YT.find(i=>Ma(On(i)?.file??"",e));if(o==="pour"||o==="pipe")Kt(o);else{if(o==="studio")return g_(n.startsWith("/work")&&Fe()?"money work":"days",n);if(Ts("run",n))return Nt(Ts("run",n));bn("set-up")}h_(()=>Nt(Ts(o??"run",n)))}function Fa(t){let{days:e,complaint:n,is_old:o}=Aa(t);return r`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?ZT(t,n):u}
    ${e?r`<div class=${o?"old":""}>${XT(t,e)}</div>
            ${u0(t,o)}`:n?u:r`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function ZT(t,e){let{field:n,is_fault:o}=e;return o?r`<p class="alarm" role="status">${Q(e)}</p>
      <button type="button" @click=${()=>Bd(t)}>Ask again</button>`:["/days","/days/making"].includes(n)||t==="run"&&!it()?r`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{__(t)}}>To my making days</button>`:["/work","/work/each_batch"].includes(n)?r`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{Nd(t,{...e,field:"/work/each_batch"})}}
      >
        To the time of a batch
      </button>`:r`<p class="alarm" role="status">${yn(n)}${is(Q(e))}</p>
    ${n?r`<button type="button" @click=${()=>{Nd(t,e)}}>Go to the field</button>`:u}`}var XT=(t,e)=>r`${t0(t,e)} ${c_(e)} ${o0(t,e)} ${r0(e)} ${a0(e)} ${l0(e)}`,Ud=(t,e,n)=>r`<small>${t?e:n}</small>`;function t0(t,e){let{kept:n,promise:o,promise_proved:i,from:s}=e;return n===null?r`<p class="when">
        Begun today, ${At(s)}, promise it for <b>${At(o)}</b>.
        ${Ud(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>Nt(document.getElementById(z(t,"/due")))}>
        Give it a due day
      </button>`:n?e0(e):n0(e)}function e0({asked:t,latest_start:e,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:s,pieces:a,last_making_day:d}]=t;return r`<p class="when">
      Begin on <b>${At(e)}</b> at the latest to have ${K(a,"piece")} by
      <b>${At(s)}</b>.
      ${Ud(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${d?r`<p>The last day to pour any of it is ${At(d)}.</p>`:u}
    <p>
      Begun today, all of it can be ready by ${At(o)}.
      ${i?u:r`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function n0({asked:t,in_time_proved:e}){let n=({pieces:o,in_time:i,due:s,rest_on:a})=>i?r`${i} of ${K(o,"piece")} by ${At(s)}, the rest on <b>${At(a)}</b>.`:r`none of the ${K(o,"piece")} by ${At(s)}, all of them on <b>${At(a)}</b>.`;return r`${t.filter(({kept:o})=>o===!1).map(o=>r`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${Ud(e,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var o0=(t,{days:e})=>r`<details ?open=${t==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${e.map(n=>r`<li>
            <h3>${At(n.day)} <small>${i0(n)}</small></h3>
            <ul>
              ${n.acts.map(s0)}
            </ul>
          </li>`)}
    </ol>
  </details>`,i0=({hours_min:t,used_min:e,off:n})=>n?"day off":t&&e?`${Ir(e)} of ${Ir(t)}`:"",s0=({text:t,min:e,caution:n})=>r`<li>
    ${is(t)}${e?r` <small>${Ir(e)}</small>`:u}
    ${n?r`<p class="minded"><strong>Caution</strong> ${n}</p>`:u}
  </li>`;function r0({what_if:t,kept:e}){if(!t.length)return r`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:s,proved:a})=>[o&&!e?"keeps the due day, ":"",o?`begin on ${At(i)} at the latest`:`ready by ${At(s)}`,a?"":" (the search ended there)"].join("");return r`<h3>${e===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${t.map(o=>r`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function a0({extras:t}){return t.length?r`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${t.map(({run:e,batch:n,mould:o,cavities:i})=>r`<li>Batch ${n} of ${e} fills ${K(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:u}function l0({notes:t}){let e=({severity:n,text:o})=>n==="note"?r`<p>${is(o)}</p>`:r`<p class="minded"><strong>Caution</strong> ${is(o)}</p>`;return t.length?r`<h3>To mind</h3>
        ${t.map(e)}`:u}function u0(t,e){let n=l_(t),o=Jn(n.file),i={plan:n,paper:l.printing.paper,"with-days":!0};return r`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${Ut("Calendar file (.ics)",Qt(`${o} days.ics`,{kind:"calendar",days:n}),"",e)}
      ${nn({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:e})}
      ${Ut("Table of the days (.csv)",Qt(`${o} days.csv`,{kind:"days-csv",days:n}),"",e)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    <p role="status">${zn()}</p>
  </section>`}var ko=t=>(e,n,o="")=>r`<tr class=${o}>
      <th scope="row">${e}</th>
      ${t.map(i=>r`<td><b>${n(i)}</b></td>`)}
    </tr>`,Rs=(t,e)=>r`<tr class="group">
    <th scope="rowgroup" colspan=${e.length+1}>${t}</th>
  </tr>`;function Ss(t,e,n,o){let i=`quote ${e}`,s=l.open.has(i),a=`quote-${e.replaceAll(/\W/g,"-")}`,d=r`<button
    type="button"
    class="line"
    aria-expanded=${s?"true":"false"}
    aria-controls=${s?a:u}
    @click=${()=>qt("open",i)}
  >
    ${e}<span class="how" aria-hidden="true">${s?"\u2013":"="}</span>
  </button>`;return r`${ko(t)(d,n)}
  ${s?r`<tr class="opened">
          <td colspan=${t.length+1} id=${a}>${t.map(o)}</td>
        </tr>`:u}`}var As=(t,e)=>r`<div class="sum">
    <table>
      <caption>
        ${t}
      </caption>
      <tbody>
        ${e}
      </tbody>
    </table>
  </div>`;function Ca({parts:t,items:e},n){let o=t.find(i=>i.part===n);return o?e.some(i=>i.part===n&&i.cost!==null)?o.each:"unpriced":"\u2013"}var La=(t,{items:e},n)=>As(t,e.filter(o=>o.part===n).map(({name:o,amount:i,cost:s,how:a})=>r`<tr>
            <th scope="row">${o}</th>
            <td>${s??"unpriced"}</td>
            <td>${a||i}</td>
          </tr>`)),Wa=(t,e)=>Ss(t,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>r`${d0(e(n),n.cash)} ${c0(n.cash)}`),d0=(t,e)=>r`${As(`Packs to buy, ${t}`,(e?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:s,seller:a})=>r`<tr>
          <th scope="row">${n}</th>
          <td>${s}</td>
          <td>${o} × ${i}${a?`, ${a}`:""}</td>
        </tr>`))}
  ${e?.unpriced.length?r`<p class="alarm">No pack is listed, and not in the sum: ${e.unpriced.join(", ")}.</p>`:u}
  ${e&&!e.proved_cheapest?r`<p class="hint">Not proved to be the least that is possible.</p>`:u}`,c0=t=>As("Left of them when all is made",(t?.left??[]).map(({shown_as:e,left:n})=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`));function Ds(t){let e=t.flatMap(({prices:n})=>n);return e.filter((n,o)=>e.findIndex(({way:i})=>i===n.way)===o)}var $_=t=>`${S(t,1)} %`;function p0(t){return"margin_percent"in t?`margin ${S(t.margin_percent,2)} %`:"markup_percent"in t?`markup ${S(t.markup_percent,2)} %`:"price as set"}var zd=(t,e)=>({prices:n})=>{let o=n.find(i=>i.way===t);return o?e(o):"\u2013"};function Ba(t,e,{way:n,by:o,ask:i,with_tax:s},a,d=u){let c=i===s,p=ko(t),m=w=>zd(n,w),_=(w,b)=>a?r`${b} ${In(w)}`:b;return r`<tbody>
    ${Rs(r`<span class="way">${n}</span>, ${p0(o)}`,t)} ${d}
    ${p(e?c?"Ask, with tax":"Ask, without tax":"Ask",m(Jd),"ask")}
    ${e?p("tax in it",m(({tax:w})=>c?w:"none")):u}
    ${p("fees",m(({fees:w})=>w))}
    ${p("left for you",m(({profit:w})=>w))}
    ${p(_("margin","margin, of the price"),m(w=>$_(w.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m(w=>$_(w.markup_percent)))}
  </tbody>`}var Jd=({ask:t,is_below_cost:e})=>e?r`<span class="below">${t}<small>below cost</small></span>`:t;function Ea(t,e){let n=o=>t.filter(({prices:i})=>i.some(s=>s.way===o&&s.is_below_cost));return Ds(t).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>r`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${e(i)}
        </p>`)}var Vd=t=>t===1?"once":`${t} times`;function w_({times:t,currency:e,has_tax:n},o){let i=ko(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${t.map(s=>r`<th scope="col"><b>${Vd(s.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:s})=>s)}
        </tbody>
        <tbody>
          ${Rs("It costs",t)} ${t[0].lines.map((s,a)=>m0(t,a))}
          ${i("The whole order",({cost:s})=>s,"sum-of")}
        </tbody>
        <tbody>
          ${Wa(t,s=>`made ${Vd(s.times)}`)}
        </tbody>
        ${Ds(t).map((s,a)=>Ba(t,n,s,a===0,g0(t,s.way)))}
      </table>
    </div>`}var Kd=({run:t,sell:e})=>`${t??""}, ${e} ${e===1?"piece":"pieces"}`,m0=(t,e)=>Ss(t,Kd(t[0].lines[e]),({lines:n})=>n[e].cost,({lines:n})=>r`${f0(n[e])} ${n[e].parts.map(({part:o})=>h0(n[e],o))}`),f0=t=>As(`A piece of ${Kd(t)}, ${t.make} made`,[...t.parts.map(({part:e})=>[e,Ca(t,e)]),["Cost of a piece",t.cost_each]].map(([e,n])=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`)),h0=(t,e)=>La(`${e} of all of them, ${Kd(t)}`,t,e),g0=(t,e)=>t[0].lines.map(({run:n},o)=>ko(t)(`${n??""}, a piece`,({lines:i})=>zd(e,Jd)(i[o]))),b_=({times:t})=>Ea(t,e=>`the order loses money, made ${e.map(n=>Vd(n.times)).join(", ")}.`);function y_({times:t}){let e=t.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=t.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:s})=>s.map(a=>`${i??""}: ${a}`)));return n.push(...e.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?r`<div class="dangers">
    ${[...new Set(n)].map(o=>r`<p class="danger"><strong>${Re}</strong> ${o}</p>`)}
  </div>`:u}function v_({times:t,remarks:e=[]}){let[{together:n,lines:o}]=t,i=n.flatMap(({cautions:s})=>s).filter(({severity:s})=>s!=="danger");return!n.length&&!e.length?u:r`<ul class="limits">
    ${n.map(s=>r`<li>
          <b
            >Poured together (${s.word}): ${Oe(s.lines.map(a=>o[a].run??""))} from one base,
            "${s.formula}", ${O(E(l.units,s.make_g))} in
            ${K(s.batches.reduce((a,{count:d})=>a+d,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:s})=>r`<li>${s}</li>`)} ${e.map(s=>r`<li>${s}</li>`)}
  </ul>`}function _0(t){return t.length<2?t[0]?.way:t.find(({way:e})=>e===l.printing.way)?.way}function Ia({file:t,question:e,prices:n,is_old:o}){let i=Jn(t),s=_0(n),a={quote:n.length>1&&s?{...e,way:s}:e},d=n.map(p=>[p.way,p.way]),c={buy:{files:[t]}};return r`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${d.length>1?r`<p class="question">The price that is offered</p>
            ${at("The price that is offered",s,d,p=>y(l.printing,{way:p}))}`:u}
    <div class="choice">
      ${n.length?nn({words:"Offer",kind:"offer",file:`${i} offer`,of:a,is_asleep:o||!s}):u}
      ${nn({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:e}})}
      ${l.files?.studios.length?r`${nn({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${Ut("Shopping list, table",Qt(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:u}
    </div>
    ${n.length?s?u:r`<p class="hint">An offer has one price: choose which.</p>`:r`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${zn()}</p>
  </section>`}var Qd=class extends HTMLElement{#n;#t="";#e="";#i="";#o=new IntersectionObserver(([e])=>e.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#s()}disconnectedCallback(){this.#o.disconnect(),this.#r()}set words(e){this.#t=e}set question(e){JSON.stringify(e)!==JSON.stringify(this.#n)&&(this.#n=e,this.#r(),this.#a(),this.#s())}#s(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#r(){this.#e&&URL.revokeObjectURL(this.#e),[this.#e,this.#i]=["",""]}async#l(){this.#o.disconnect();let e=this.#n,[n,o]=await $0(e);if(e!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#e,this.#i]=[n,o],this.#a()}#a(){let e=this.#i||"Drawing ...";de(this.#e?r`<img src=${this.#e} alt=${this.#t} />`:r`<p class="hint">${this.#n?e:u}</p>`,this)}};async function $0(t){try{return[URL.createObjectURL(await Le({kind:"picture",quote:t})),""]}catch(e){if(!(e instanceof v))throw e;return["",e.message]}}customElements.define("cost-picture",Qd);function k_(t,e){let{costs:n,currency:o}=t;if(!n.length)return u;let[i,s]=[n[0],n.at(-1)],a=({sell:d,each:c})=>`${c} ${o} at ${d}`;return r`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${a(i)} to ${a(s)}, and where the money of a piece goes. The figures stand below.`}
        class=${e?"old":""}
        .question=${e?Mt:Ta()}
      ></cost-picture>
    </div>
    <details>
      <summary>The same in figures</summary>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Pieces sold</th>
            <th scope="col">A piece costs, ${o}</th>
          </tr>
        </thead>
        <tbody>
          ${w0(t).map(({sell:d,each:c})=>r`<tr>
                <th scope="row">${d}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function w0({costs:t,numbers:e,steps:n}){let o=new Set([...e.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),t[0].sell,t.at(-1).sell]);return t.filter(({sell:i})=>o.has(i))}var x_=({sell:t})=>`${t} to sell`;function T_({numbers:t,currency:e,has_tax:n},o){let i=ko(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${t.map(s=>r`<th scope="col"><b>${s.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("to make",s=>s.make)} ${i("fillings",s=>s.fillings)}
          ${i("batches",s=>s.batches)}
          ${t.some(s=>s.to_stock)?i("beyond those, at no cost",s=>s.to_stock):u}
        </tbody>
        <tbody>
          ${Rs("A piece costs",t)} ${b0(t).map(s=>y0(t,s))}
          ${i("Cost of a piece",s=>s.cost_each,"sum-of")} ${i("The whole run",s=>s.cost)}
        </tbody>
        <tbody>
          ${Wa(t,x_)}
        </tbody>
        ${Ds(t).map((s,a)=>Ba(t,n,s,a===0))}
      </table>
    </div>`}var b0=t=>[...new Set(t.flatMap(({parts:e})=>e.map(({part:n})=>n)))],y0=(t,e)=>Ss(t,e,n=>Ca(n,e),n=>La(`${e} of the whole run, ${x_(n)}`,n,e)),R_=({numbers:t})=>Ea(t,e=>`each piece sold loses money, at ${e.map(({sell:n})=>n).join(", ")} to sell.`);function S_(){return r`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${Fe()?k0():v0()}
  </section>`}var v0=()=>r`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>Gd()}>To the prices paid</button>`;function Gd(t,e="lane-studio"){rt("set-up studio"),t&&Et("studio",t),bn("set-up"),requestAnimationFrame(()=>G(H(e)))}function k0(){let{quote:t,complaint:e,is_old:n}=ka();return r`${t?r`${x0(t)} ${R_(t)}`:u}
    <div class="row">${S0(e)}</div>
    ${Yd()?u:Zd(t?.currency,e)} ${e?R0(e):u}
    ${t?O0(t,n):e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}function x0({numbers:t}){let e=[...new Set(t.flatMap(o=>o.dangers))];if(!e.length)return u;let n=o=>t.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return r`<div class="dangers">
    ${e.map(o=>r`<p class="danger"><strong>${Re}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var T0=["sell","margin","markup","price"],fi=(t,e)=>t?.file===""&&t.field===e?Q(t):void 0;function R0(t){return T0.some(e=>fi(t,e))?u:r`<p class="alarm" role="status">${yn(t.field)}${Q(t)}</p>
    ${t.is_fault?r`<button type="button" @click=${Pd}>Ask again</button>`:t.field.startsWith("/")?r`<button type="button" @click=${Td}>Go to the field</button>`:u}
    ${kd(t)}`}function ja({id:t,label:e,unit:n,value:o,hint:i,complaint:s,take:a,left:d}){return r`<div class="field ${s?"wants":""}">
    <label for=${t} data-said=${n??u}>${e}</label>
    <input
      id=${t}
      .value=${F(o)}
      @input=${c=>a(c.target.value)}
      @blur=${()=>d?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${s?"true":"false"}
      aria-describedby=${s||i?`${t}-said`:u}
    />
    ${ft(t,s,i)}
  </div>`}function S0(t){let{numbers:e}=l.quote_wish;return ja({id:"quote-numbers",label:"Numbers of pieces",value:e??String(l.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:fi(t,"sell"),take:n=>Ii({numbers:n}),left:()=>{e!==void 0&&!e.trim()&&Ii({numbers:void 0})}})}var A0=()=>it()?Gd("money asking",`${z("studio","/asking")}-name`):Gd(),Yd=()=>Object.keys(g("studio","/asking")??{}).length>0,D0=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],P0={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function Zd(t,e){let{by:n,figure:o}=l.quote_wish,{label:i,unit:s}=P0[n??"price"],a=d=>s&&Ve(d)?`${d.trim()} ${s}`:d;return r`${at("A price, for this moment",n,D0,d=>{Ii({by:d,figure:""}),G(H("quote-figure"))})}
    ${n?r`<div class="row">
            ${ja({id:"quote-figure",label:i,unit:s||t,value:s?o.replace(/ %$/,""):o,complaint:fi(e,n),take:d=>Ii({figure:a(d)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${A0}>Keep my ways of selling</button>`}function O0(t,e){let n=[...new Set(t.numbers.flatMap(o=>o.unpriced))];return r`${n.length?r`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${T_(t,e)} ${M0(t,e)} ${k_(t,e)}
  ${Ia({file:l.run.file,question:Ta(),prices:t.numbers[0].prices,is_old:e})}`}function M0({numbers:t,steps:e,pack_steps:n,gaps:o,currency:i},s){let a=d=>d===null?"":`, ${d} ${i} more`;return r`<div class="worth-making ${s?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${t.flatMap(({around:d})=>d.map(({text:c})=>r`<li><b>${c}</b></li>`))}
      ${o.map(({from:d,to:c,why:p})=>r`<li><b>${d===c?d:`${d} to ${c}`} cannot be made: ${p}.</b></li>`)}
    </ul>
    ${e.length?r`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${e.map(d=>r`<li><b>${d.sell}: ${d.begins}${a(d.more)}</b></li>`)}
            </ul>
          </details>`:u}
    ${n.length?r`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(d=>r`<li><b>${d.sell}: ${d.shown_as}${a(d.more)} to lay out</b></li>`)}
            </ul>
          </details>`:u}
  </div>`}function A_(){let{order:t}=l;if(!t)return r`<h1 tabindex="-1">Order</h1>`;let{open:e}=t,{due:n}=e.now;return r`${Ge(e)} ${Ye(e)}
    <h1 tabindex="-1">${String(e.now.for||"Order")}</h1>
    <p class="aside">${e.file}${n?`, due ${bt(String(n))}`:u}</p>
    ${n_()} ${pn(e.now)?Fa("order"):u}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${pn(e.now)?C0():F0()}
    </section>
    ${pn(e.now)?I0():u}`}var F0=()=>r`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function C0(){let{quote:t,complaint:e,is_old:n}=e_();return r`${t?r`${y_(t)} ${b_(t)}`:u}
    <div class="row">${L0(e)}</div>
    ${Yd()?u:Zd(t?.currency,e)} ${e?B0(e):u}
    ${t?r`${E0(t)} ${v_(t)} ${w_(t,n)}
          ${Ia({file:Lt().open.file,question:Cd(Lt()),prices:t.times[0].prices,is_old:n})}`:e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}var L0=t=>ja({id:"order-times",label:"How often it is made",value:Lt().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:fi(t,"times"),take:e=>y(Lt(),{times:e})}),W0=["times","margin","markup","price"];function B0(t){if(W0.some(n=>fi(t,n)))return u;let e=he("order");return r`<p class="alarm" role="status">
      ${e?r`${yn(t.field)}${Q(t)}`:t.line}
    </p>
    ${t.is_fault?r`<button type="button" @click=${Fd}>Ask again</button>`:e&&Ke()?r`<button type="button" @click=${()=>Nt(Ke())}>Go to the field</button>`:u}`}function E0({times:t}){let e=[...new Set(t.flatMap(n=>n.unpriced))];return e.length?r`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${e.join(", ")}. The cost leaves it out.
  </p>`:u}function I0(){let{file:t,now:e}=Lt().open,n={plan:{file:t,order:e},paper:l.printing.paper};return r`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${Da()}
    <div class="choice">
      ${nn({words:"Bench sheets",kind:"sheet",file:`${Jn(t)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${zn()}</p>
  </section>`}var j0=(t,e)=>(t.due??"~").localeCompare(e.due??"~")||(e.changed??"").localeCompare(t.changed??"");function D_(){let t=[...l.files?.orders??[]].sort(j0),e=l.new_order.trim(),n=()=>{lt(async()=>{await Ef(e),h({new_order:""})})};return r`${_e("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${t.length?Me(t,q0):r`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${F(l.new_order)}
            @input=${o=>h({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e} @click=${n}>Begin the order</button>
      </div>
      ${e?"":r`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${$e("order")}`}function q0(t){let{pieces:e,due:n,changed:o}=t,i=[e===void 0?"":K(e,"piece"),n?`due ${bt(n)}`:"",o?`changed ${bt(o)}`:""].filter(Boolean);return Xe({kind:so,one:t,facts:i,open:()=>ns(t.file)})}function O_(){if(l.view==="order"&&l.order)return P_(l.order.open);let t=Fn();if(t)return P_(t);let e=H0();if(e)return e;let{run:n}=l,o=l.formula_of==="apart"||!(J(n)||n.theirs||n.failed);return l.view==="formula"&&o?N0():n.theirs?ec(n):n.failed?Ha(`Not saved: ${n.failed}`):J(n)?tc:qa(n.shipped?Xd:`Saved in ${n.file}`)}function P_(t){return t.theirs?ec(t):t.failed?Ha(`Not saved: ${t.failed}`):J(t)?tc:qa(t.shipped?Xd:`Saved in ${t.file}`)}var Xd="Built-in: your first change is saved as a copy.",tc={words:"Saving ...",is_kept:!1},qa=t=>({words:t,is_kept:!0}),Ha=t=>({words:t,is_kept:!1,is_failed:!0}),ec=t=>Ha(uo(t)?`Not saved: ${t.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);function H0(){let t=l.formulas.apart?"apart":"run",e=un(t);if(e)return ec(e);if((t==="apart"?[l.formulas.apart]:[l.formulas.pour,l.formulas.pipe]).some(o=>o&&J(o)))return l.complaint?.file===""?Ha(`Not saved: ${l.complaint.problem}`):tc}function N0(){let t=l.formulas[l.formula_of];return qa(t?t.shipped?Xd:`Saved in ${t.file}`:"")}function Ua(){let{view:t,mould:e,order:n,past:o,future:i}=l;if(t==="moulds"&&e)return Na(e,Cf,Lf);let s=ue(t)?Fn():void 0;return s?Na({past:M_(s,o),future:M_(s,i)},zi,Zl):ue(t)?{undo:Vi()&&Wu,redo:iu()&&Mh}:t==="order"&&n?Na(n,If,jf):Na({past:o,future:i},zi,Zl)}function M_(t,e){let n=e.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===t);return o&&o.now!==t.now?e:[]}var Na=({past:t,future:e},n,o)=>({undo:t.length?n:void 0,redo:e.length?o:void 0});var F_={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips"},U0={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},z0="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",J0="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",nc=t=>r`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${R`<path d=${t} />`}</svg>`;function W_(){let t=l.view==="reading";return r`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${t?u:r`<nav class="rail-lists" aria-label="Lists">
                ${rp.map(e=>B_(e,F_[e],r`${F_[e]}`))}
              </nav>
              ${K0()}`}
    </div>
    ${t?u:Q0()}
  </header>`}var V0={metric:r`g<span class="wide">, mm</span>`,both:r`both`,us:r`oz<span class="wide">, in</span>`},za=["metric","both","us"],C_={metric:"g",both:"both",us:"oz"},L_=t=>()=>{h({units:t}),localStorage.setItem("units",t)};function K0(){let t=za[(za.indexOf(l.units)+1)%za.length];return r`<div class="tools units" role="group" aria-label="Units">
      ${za.map(e=>r`<button type="button" aria-pressed=${l.units===e?"true":"false"} @click=${L_(e)}>
            ${V0[e]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${L_(t)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${C_[l.units]}<span
        class="unseen"
        >. Change to ${C_[t]}</span
      >
    </button>`}function Q0(){let{undo:t,redo:e}=Ua();return r`<div class="bar">
    ${l.run.file?G0():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!t} @click=${t}>${nc(z0)}<span>Undo</span></button>
      <button type="button" ?disabled=${!e} @click=${e}>${nc(J0)}<span>Redo</span></button>
    </div>
    ${l.run.file||l.view==="order"?tR():u}
  </div>`}function G0(){return r`<nav aria-label="Views of this run">
    <p class="rail-name">${String(l.run.now.name??l.run.file)}</p>
    <div class="rail-views">${ap.map(Y0)}</div>
  </nav>`}function Y0(t){let[e,n]=U0[t],o=Z0(t);return B_(t,o?`${e}, ${o.words}`:e,r`${nc(n)}<span>${e}</span>${o?r`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function Z0(t){if(t==="watch"&&Uf())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(t==="set-up"&&X0())return{sign:"\u25CB",words:"missing"}}var X0=()=>l.complaint!==void 0&&!l.complaint.is_fault;function B_(t,e,n){let o=l.view===t||l.view==="order"&&t==="orders";return r`<button
    type="button"
    aria-label=${e}
    aria-current=${o?"page":u}
    @click=${()=>{bn(t)}}
  >
    ${n}
  </button>`}function tR(){let{words:t,is_kept:e,is_failed:n}=O_();return r`<p class="saving ${n?"failed":e?"kept":""}" role="status">${t}</p>`}var E_=()=>r`<section class="card" aria-label="What it is for">
      <div class="row">
        ${f({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${f({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${Fa("run")}`;function j_(t){if(!xh(t))return u;let{whole:e}=t,{batches:n}=e.pieces,o=It(e)?`${K(n,"batch","batches")} together`:"all whippings together";return r`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${I_(t,"pour","The base, whole run")}
      ${e.pipe?I_(t,"pipe","The topping, whole run"):u} ${eR(t)}
    </div>
  </section>`}function I_(t,e,n){let{whole:o}=t,i=e==="pour"?o.pour:o.pipe,s=[...Hh(i),...ta(i)];return r`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:a,i:d})=>Ja(`${e}.ingredients.${d}.g`,a.name,yo(l.units,a)))}
    ${Ja(`${e}.make_g`,e==="pour"?"Base in all":"Topping in all",E(l.units,i.make_g))}
  </div>`}var Ja=(t,e,n)=>M({key:`needs.${t}`,label:e,shown:n,of:t});function eR(t){let{whole:e}=t,n=(e.pour.layers??[]).flatMap((s,a)=>s.colours.map((d,c)=>({layer:s,one:d,i:a,j:c}))),o=e.dust??[];if(!n.length&&!o.length)return u;let i=s=>mt(l.units,Wt(s,""));return r`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:a,i:d,j:c})=>Ja(`pour.layers.${d}.colours.${c}.g`,`${a.name}, for ${s.name}`,yo(l.units,a)))}
    ${o.map((s,a)=>Ja(`dust.${a}.g`,s.name,i(s)))}
  </div>`}function q_(t){let{cost:e,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:a}=t.piece,d=s?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return r`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${M({key:"piece.fresh",label:c("Fresh"),shown:E(l.units,n),of:"piece.fresh_g"})}
      ${o===null?u:M({key:"piece.cured",label:c("Cured"),shown:E(l.units,o),of:"piece.cured_g"})}
      ${s?M({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:E(l.units,s.cured_g??s.fresh_g),of:s.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:M({key:"piece.label",label:"Net weight for the label",shown:E(l.units,i,0),of:"piece.label_g"})}
      ${a?M({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[a.width_mm,a.depth_mm,a.height_mm].map(p=>S(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${e&&e.amount!==null?r`${M({key:"piece.cost",label:"Material cost of one piece",shown:[`${e.amount} ${e.currency}`,""],size:"weigh",note:`${e.total} ${e.currency} for the run`,of:"piece.cost.amount"})}
            ${e.unpriced.length?r`<p class="alarm">Unpriced, and not in this figure: ${e.unpriced.join(", ")}.</p>`:u}`:r`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${oc(t)}
    </section>
    ${S_()} ${j_(ii(t))}`}function oc(t){let e=t.label;if(!e)return u;let n=(e.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?r`<h3>${i}</h3>
          <p>${s}</p>`:u;return r`<details>
    <summary>Label draft, ${e.market}</summary>
    ${o("Net quantity",e.net_quantity?`${e.net_quantity.statement}: ${e.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",e.as_saponified?.text)}
    ${o("Ingredients, as charged",e.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(e.remarks??[]).map(i=>r`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[N_,sc]=[440,270],[Ps,ic,Va,hi]=[64,N_-10,10,sc-52],nR=6,oR=8;function H_(t){let e=t/nR,n=10**Math.floor(Math.log10(e)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=e);return Array.from({length:Math.floor(t/o+1e-9)+1},(i,s)=>s*o)}var gi=t=>S(t,1);function U_(t,e){let n=t.at(-1)?.depth_mm??1,o=t.at(-1)?.volume_ml??1,i=d=>gi(Ps+(ic-Ps)*d/n),s=d=>gi(hi-(hi-Va)*d/o),a=t.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${s(c)}`).join("");return r`<svg
      class="level-curve"
      viewBox="0 0 ${N_} ${sc}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${e} millimetres"
    >
      ${H_(n).map(d=>R`<path class="grid" d="M${i(d)} ${Va}V${hi}" />
            <text x=${i(d)} y=${hi+20} text-anchor="middle">${gi(d)}</text>`)}
      ${H_(o).map(d=>R`<path class="grid" d="M${Ps} ${s(d)}H${ic}" />
            <text x=${Ps-8} y=${s(d)} text-anchor="end" dominant-baseline="middle">${gi(d)}</text>`)}
      ${R`<text x=${(Ps+ic)/2} y=${sc-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Va+hi)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${s(0)}${a}" />
        <path class="pour-line" d="M${i(e)} ${Va}V${hi}" />`}
    </svg>
    ${iR(t)}`}function iR(t){let e=Math.max(1,Math.round(t.length/oR)),n=t.filter((o,i)=>(i+1)%e===0);return r`<details>
    <summary>The curve as a table</summary>
    <table class="levels">
      <caption>
        What one cavity holds to a depth
      </caption>
      <thead>
        <tr>
          <th scope="col">Depth, mm</th>
          <th scope="col">Volume, ml</th>
          <th scope="col">One millimetre more, ml</th>
        </tr>
      </thead>
      <tbody>
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:s})=>r`<tr>
              <th scope="row">${gi(o)}</th>
              <td>${gi(i)}</td>
              <td>${S(s,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Ka=Math.PI/8,sR=500,rc=class extends HTMLElement{#n=[];#t=0;#e;#i=!1;#o=!1;#s="";#r=!1;#l="";#a="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([e])=>this.#$(e.isIntersecting),{rootMargin:"400px"});set views(e){this.#n=e,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#l="",URL.revokeObjectURL(this.#s)}#$(e){this.#m=e,e&&requestIdleCallback(()=>{this.#w()},{timeout:1500})}async#w(){if(this.#e||this.#o)return this.#g();let e=this.querySelector("canvas");if(!(!this.isConnected||!e||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(e),this.#f.observe(e)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let e=this.#e||this.#o;!this.#m||!e||this.#c()===this.#l||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},sR))}#c(){let{of:e}=this.#n[this.#t],n=this.#o?"plan"in e?"piece":"picture":"glb",[o,i]=Object.entries(e)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let e=this.#c();if(e!==this.#l){try{let n=await Le(JSON.parse(e));if(e!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#s),this.#s=URL.createObjectURL(n)):this.#e?.show(Qo(await n.arrayBuffer())),this.#l=e,this.#a=""}catch(n){if(!(n instanceof v))throw n;this.#a=n.message}this.#u()}}#_(e){e(),this.#a="Drawing ...",this.#u(),this.#p()}#u(){let e=r`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>r`<button
            type="button"
            aria-pressed=${i===this.#t?"true":"false"}
            @click=${()=>this.#_(()=>this.#t=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=r`<p class="aside" role="status">${this.#a}</p>`;de(r`${e} ${this.#o?this.#y():this.#b()} ${n}`,this)}#b(){let e=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return r`<canvas
        role="img"
        aria-label="${this.#n[this.#t]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${e(-Ka)}>Turn left</button>
        <button type="button" @click=${e(Ka)}>Turn right</button>
        <button type="button" @click=${n(Ka)}>From above</button>
        <button type="button" @click=${n(-Ka)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return r`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#s?r`<img
              src=${this.#s}
              alt="${this.#n[this.#t].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",rc);function z_(t){let{measured:e}=l;if(!e)return r`<p role="status">${l.measuring_failed??"Measuring the mould ..."}</p>`;let n=e.gauge.pockets[0],o=e.gauge.notes;return r`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${t.pour.mould}</small></h2>
    ${M({key:"mould.brimful",label:"To the brim",note:`${O(Tt(l.units,n.brim_mm-n.floor_mm))} deep, ${e.gauge.pockets.length} ${e.gauge.pockets.length===1?"cavity":"cavities"}`,shown:St(l.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:e.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${U_(n.levels,t.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${rR(t,e.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?r`<ul class="limits">
            ${o.map(i=>r`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function rR(t,e){let n={words:"The mould, filled",of:{gauge:{file:e,"below-brim":`${t.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:l.run.file,run:l.run.now}}};return t.pipe||t.decorations?.length||t.pour.layers?.length?[o,n]:[n,o]}var aR=t=>t.batches.flatMap(e=>e.numbers.map(n=>({number:n,one:e}))).sort((e,n)=>e.number-n.number);function J_(t){let{batch:e}=l.printing;return It(t)&&e<=t.pieces.batches?e:0}function lR(t){if(!It(t))return u;let e=J_(t),n=i=>vo({batch:Number(i.target.value)}),o=(i,s)=>r`<option value=${i} .selected=${F(i===e)}>${s}</option>`;return r`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${aR(t).map(({number:i,one:s})=>o(i,`batch ${i} of ${t.pieces.batches}: ${Ze(t,s)}`))}
      </select>
    </div>
  </div>`}function V_(t){let{paper:e}=l.printing,n=Jn(l.run.file),o={file:l.run.file,run:l.run.now},i=l.measured?.mould,s={file:i,"below-brim":`${t.pour.below_brim_mm} mm`},a=J_(t),d={plan:o,paper:e,...a?{batch:String(a)}:{}};return r`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${Da()} ${lR(t)}
    <div class="choice">
      ${nn({words:"Bench sheet",kind:"sheet",file:`${n}${a?` batch ${a}`:""}`,of:d},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${t.label?Ut("Label draft",Qt(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${Ut("Drawing of the pour, true size",Qt(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${Ut("Drawing of the piece",Qt(`${n}.svg`,{kind:"piece",plan:o}))}
      ${Ut("Whole piece, GLB (3D viewer)",Qt(`${n}.glb`,{kind:"glb",plan:o}))}
      ${Ut("Whole piece, STL (3D printing)",Qt(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?r`${Ut("Filled cavity, GLB (3D viewer)",Qt(`${n} cavity.glb`,{kind:"glb",gauge:s}))}
            ${Ut("Cavity, STL (3D printing)",Qt(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${zn()||`The drawing has the pour line ${O(Tt(l.units,t.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var K_=t=>V_(t);var Rt={at:"/decorations"},_i=t=>`${Rt.at}/${t}`,Vn=t=>A("run",`${_i(t)}/name`).trim()||`Decoration ${t+1}`,Gt=()=>$(l.run.now,"/cut")!==void 0,xo=t=>["mould","rod","drizzle","bought"].find(e=>g("run",`${t}/${e}`)!==void 0),Os=t=>["per_piece","per_cast"].find(e=>g("run",`${t}/${e}`)!==void 0);var le="/batch",Q_=t=>`${t}/moulds_owned`;function ac(){return D({name:"batches",pointers:[le],summary:`Batches${uR()}`,body:()=>r` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${C("run",le)}
        <div class="row">${dR()} ${pR()}</div>
        ${T({question:"Cavities at each filling",at:le,asked_at:`${le}/fill`,chosen:g("run",`${le}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>G_("fill",t==="full"?t:void 0)})}`})}function uR(){let[t,e]=[`${le}/pieces`,`${le}/casts`].map(o=>A("run",o)),n=[t&&`at most ${t} in a batch`,e&&`at most ${e} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function G_(t,e){let n=pt("run",le,[t]),o=e===void 0?n:{...n,[t]:e};return Object.keys(o).length?o:void 0}function dR(){let t=g("run",`${le}/casts`)!==void 0,e=(n,o)=>f({label:o,at:`${le}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return Gt()?g("run",`${le}/pieces`)!==void 0?r`${e("pieces","Most bars in a batch")}
        <button type="button" @click=${cR}>Count loaves instead</button>`:e("casts","Most loaves in a batch"):t?e("casts","Most casts in a batch"):e("pieces","Most pieces in a batch")}function cR(){W("run","Counted in loaves",le,G_("pieces",void 0))}function pR(){let t=`${le}/whippings`;return!se()&&g("run",t)===void 0?u:f({label:"Whippings a batch",at:t,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var mR={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},we={at:"/dust"},Qa=t=>A("run",`/dust/${t}/name`).trim()||`Dust ${t+1}`;function Y_(){rt("set-up dust"),j(we,{name:""},"Dust")}function fR(t){return g("run",`${t}/per_piece`)!==void 0?"piece":g("run",`${t}/on_covered_surface`)===void 0?void 0:"surface"}function Z_(t){let e=`/dust/${t}`,n=fR(e),o=Qa(t),i=s=>({...pt("run",e,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...mR[s]});return r` ${f({label:"Which powder",at:`${e}/name`})}
  ${T({question:"How much of it?",at:e,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?f({label:`${o}, for one piece`,at:`${e}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?r`<div class="row">
            ${f({label:"Powder on the covered surface",at:`${e}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${f({label:"Share of the surface covered",at:`${e}/coverage`,unit:"%",short:!0})}
            ${f({label:"Share of the powder that sticks",at:`${e}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${jn("run",e,o)}`}var hR={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function gR(t){return["on_top","buried"].find(e=>g("run",`${t}/${e}`)!==void 0)??"by number"}function X_(t,e){let n=gR(t),o=i=>({...pt("run",t,["on_top","buried"]),...hR[i]});return xo(t)==="drizzle"?r`<p class="aside">A drizzle lies on the surface it covers.</p>`:xo(t)==="bought"?r`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:D({name:`${t} where`,pointers:[`${t}/on_top`,`${t}/buried`],summary:"Where it goes",body:()=>r` ${T({question:"Where does it go?",at:t,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?_R(`${t}/on_top`):n==="buried"?wR(t,e):r`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function _R(t){return r`<div class="row">
      ${f({label:"Pressed into the top",at:`${t}/pressed_in`,unit:"mm"})}
      ${f({label:"Flat of the peak, across",at:`${t}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${t$(t,"It is turned")}`}function t$(t,e){let n=o=>f({label:`About ${o}`,at:`${t}/turn/${o}`,unit:"deg",optional:!0,short:!0});return D({name:`${t} turn`,pointers:[`${t}/turn`],summary:e,body:()=>r` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var $R=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function wR(t,e){let n=`${t}/buried`,o=e===x(Rt).findIndex(a=>a.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),s=g("run",`${n}/placed`);return r`${C("run",n)}
  ${f({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${T({question:"When is it set in?",at:`${n}/placed`,chosen:s,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:a=>a,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${T({question:"Where in the pour?",at:t,asked_at:`${n}/arrange`,chosen:i,answers:$R,puts:a=>yR(t,a)})}
  ${i==="said"?kR(t,e):u}`}var bR=()=>r`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${R`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,e$={x:"",y:"",height:""};function yR(t,e){let n=pt("run",`${t}/buried`,["arrange","places"]);if(e!=="said")return{...g("run",t),buried:{...n,arrange:e}};let o=Number(g("run",`${t}/${Os(t)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>e$);return{...pt("run",t,["per_piece","per_cast"]),[n$(t)]:i.length,buried:{...n,places:i}}}var n$=t=>Gt()?"per_cast":Os(t)??"per_piece";function vR(t){let e=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,a)=>P(s,`${t}/${a}`,void 0),n);return P(i,`${t}/${n$(t)}`,o)};return{at:`${t}/buried/places`,least:1,and:e}}function kR(t,e){let n=vR(t),o=x(n);return r`${bR()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,s)=>{let a=`${n.at}/${s}`,d=c=>f({label:`Place ${s+1}: ${c}`,at:`${a}/${c}`,unit:"mm",short:!0});return r`<div class="part" id=${L(n,s)} role="group" aria-label="Place ${s+1} of ${Vn(e)}">
        ${C("run",a)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${N(n,s,`place ${s+1} of ${Vn(e)}`)}
        </div>
        ${t$(a,`Place ${s+1} is turned`)}
      </div>`})}
    ${Y(n,"Add a place",()=>j(n,e$,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var i$=t=>`${t} made`;function xR(){let t=_i(x(Rt).length),e=Gt()?{}:{per_piece:""};rt("set-up decorate");for(let n of[i$(t),`${t} where`])Et("run",n);j(Rt,{name:"",material:"",...e,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function s$(){let[t,e]=[x(Rt).length>0,x(we).length>0];return r`${Y(Rt,t?"Add another decoration":"Add a decoration",xR)}
  ${Y(we,e?"Add another dust":"Add a dust",Y_)}`}function r$(t){let e=_i(t);return r` ${C("run",e)} ${DR(e)}
    <div class="row">
      ${RR(e)} ${f({label:"Spares",at:`${e}/spares`,unit:"%",short:!0})}
      ${xo(e)==="bought"?u:TR(e)}
    </div>
    ${X_(e,t)} ${jn("run",e,Vn(t))}`}var TR=t=>r`${f({label:"Lost in melting",at:`${t}/melt_loss`,unit:"%",short:!0})}
  ${f({label:"Left in the jug per tray fill",at:`${t}/left_in_jug`,unit:"g",short:!0})}
  ${f({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}`;function RR(t){let e=Os(t),n=tt("run",`${t}/buried/places`).length;if(n&&n===g("run",`${t}/${e}`)&&!(Gt()&&e==="per_piece"))return r``;let o=e==="per_cast"?Gt()?"In each loaf":"In each cast":Gt()?"On each bar":"On each piece",i=s=>({...pt("run",t,["per_piece","per_cast"]),[s]:e?g("run",`${t}/${e}`):""});return r`${Gt()?T({question:"Counted by",at:t,is_told_elsewhere:!0,chosen:e,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${e?f({label:o,at:`${t}/${e}`,count:!0,short:!0}):u}`}var SR={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},o$={density:"",melt_loss:"",left_in_jug:""};function AR(t,e){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...e==="drizzle"||e==="bought"?["on_top","buried"]:[],...e==="bought"?[...Object.keys(o$),"time_per_tray_fill"]:[]],o=xo(t)==="bought"&&e!=="bought"?o$:{};return{...pt("run",t,n),...o,...SR[e]}}function DR(t){let e=xo(t),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${t}/${o}`);return D({name:i$(t),pointers:n,summary:"What it is and how it is made",is_needed:!e,body:()=>r` <div class="row">
          ${f({label:"What it is called",at:`${t}/name`})}
          ${f({label:e==="bought"?"What is bought":"What is melted for it",at:`${t}/material`})}
        </div>
        <p class="hint">${e==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${T({question:"How is it made?",at:t,is_told_elsewhere:!0,chosen:e,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>AR(t,o)})}
        ${e?PR[e](t):u}
        ${e==="bought"?u:f({label:"To fill all trays once, setting included",at:`${t}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var PR={mould:OR,rod:t=>r`<div class="row">
      ${f({label:"Rod, diameter",at:`${t}/rod/diameter`,unit:"mm",short:!0})}
      ${f({label:"Rod, length",at:`${t}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:t=>r`<div class="row">
      ${f({label:"Area covered",at:`${t}/drizzle/area`,unit:"cm2",short:!0})}
      ${f({label:"Thickness",at:`${t}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:t=>f({label:"One weighs",at:`${t}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function OR(t){let e=g("run",`${t}/fill/depth`)===void 0?"below_brim":"depth";return r`${oi("Cast in",`${t}/mould`,l.files?.moulds)}
  ${T({question:"Filled to a line",at:`${t}/fill`,chosen:e,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${e==="below_brim"?f({label:"Filled to, below the brim",at:`${t}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):f({label:"Filled to, above the floor",at:`${t}/fill/depth`,unit:"mm"})}
  ${T({question:"What makes one?",at:`${t}/cast_as`,chosen:g("run",`${t}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}function a$(){let t="/lye_pot",e=g("run",t)!==void 0;return!e&&!se()?u:r`<div class="labelled">
      ${Su(t,"Make one pot of lye solution for both",e,{})}${hn("lye_solution")}
    </div>
    ${Ae("lye_solution")}
    ${e?f({label:"The empty pot weighs",at:`${t}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function l$(t){let e={at:"/bottles"},n=x(e);return D({name:"bottles",pointers:[e.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>r` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${t&&ht(t)?` Weights are of ${ht(t)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${e.at}/${i}`,a=String(o.name)||`bottle ${i+1}`;return r`<div class="part" id=${L(e,i)} role="group" aria-label=${a}>
            <div class="part-head">
              <p class="part-title">${a}</p>
              ${N(e,i,a)}
            </div>
            ${C("run",s)}
            <div class="row">
              ${f({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${f({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${t?MR(t,i,a):u}
          </div>`})}
        ${Y(e,"Use up a bottle",()=>j(e,{name:"",holds:""},"bottle"))}`})}function MR(t,e,n){let o=t.bottles?.[e];return o?.name!==n?u:o.parts.map((i,s)=>M({key:`bottle.${e}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${S(i.percent_of_batter,2)} % of the batter`,shown:mt(l.units,Wt(i,"")),size:"weigh",of:`${t.place}.bottles.${e}.parts.${s}.g`}))}var Ms="/label",uc=()=>g("run",Ms)!==void 0;function u$(){let e=g("studio",$i.studio)!==void 0?{weight_spread:""}:{market:""};rt("set-up label"),W("run","Label added",Ms,e,H("lane-label"))}function d$(){return r`${C("run",Ms)} ${FR()}
    <button type="button" @click=${()=>W("run","Label removed",Ms,void 0)}>Remove the label</button>`}var $i={run:"/label/market",studio:"/label/market"};function dc(){let{of:t,at:e}=ms($i);return r`${T({of:t,question:"Where it is sold",at:t==="run"?Ms:e,asked_at:e,chosen:g(t,e)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>t==="run"?CR(n):n})}
  ${qn("Where it is sold",[$i])}`}function FR(){let t=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return r`${dc()}
  ${T({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:LR})}
  ${t==="weighed"?WR():r`<div class="row">
          ${f({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${f({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${f({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${tn($i)==="EU"||g("run",lc)!==void 0?Su(lc,"With the e mark",g("run",lc)===!0,!0):u}`}var lc="/label/e_mark";function CR(t){return{...pt("run","/label",t==="EU"?[]:["e_mark"]),market:t}}function LR(t){let e=pt("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return t==="weighed"?{...e,weighed_pieces:["","",""]}:e}function WR(){let t={at:"/label/weighed_pieces",least:3};return r`<div class="trials">
      ${x(t).map((e,n)=>r`<div class="row" id=${L(t,n)}>
            ${f({label:`Piece ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${N(t,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${Y(t,"One more piece",()=>j(t,"","piece"))}`}function c$(t){let{batches:e,fillings:n,cavities:o,to_stock:i}=t.pieces,s=t.batches.map(c=>`${Mu(t)?`${c.count} of `:""}${Ze(t,c)}`),a=`Made in ${e} batches${Mu(t)?": ":" of "}${Oe(s)}; ${Kr(n,o)}.`,d=t.batch_limits.filter(c=>c.sets);return r`<div class="batches-told of-plan">
    ${It(t)?r`<p><b>${a}</b></p>`:u}
    ${i>0?r`<p>
            ${K(i,t.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?r`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${t.around.length?r`<p><span class="called">One fewer, one more:</span> ${t.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var p$=t=>t.map(e=>`M${e.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function m$(t,e){let n=e.brim-e.floor,o=t.pour.poured_to_mm??t.pour.depth_mm,i=t.decorations?.find(c=>!c.buried&&c.cavity_fills>0),s=i?_$(i):0,a=i?i.on_top?.stands_proud_mm??1.9*s:0,d=t.pipe?BR(t,e,n,a):0;return{brim:n,line:o,topping:d,ball:s,proud:a,top:Math.max(n,(t.pipe?n:o)+d+a)}}function BR(t,e,n,o){let i=Se($(l.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(t.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[a,d]=au(e,e.brim-.01),c=Math.PI/4*(d-a)**2;return 1500*t.pipe.visible_each_ml/c}function cc(t,e){let[n,o]=au(t,t.brim-.01),i=(n+o)/2,s=3,a=m=>(o-n)/2*Math.sqrt(1-(m/(s+.3))**2),d=m=>-(e.brim+e.topping*m/s),c=(m,_,w)=>{let b=i+w*(Math.max(a(m),a(_))+(o-n)*.035);return`C${b} ${d(m)} ${b} ${d(_)} ${i+w*a(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<s;++m)p+=c(m,m+1,-1);p+=`L${i+a(s)*.94} ${d(s)}`;for(let m=s;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var Fs=(t,e)=>t===e?`shaded ${e}`:"plain";function Kn(t,e,n=u){return r`${f$(t,e,n)}
  ${t==="decorate"&&pc(e)?r`<p class="hint">${pc(e)}</p>`:u}`}var Qn=(t,e)=>r`<div class="small-view">${f$(t,e,u)}</div>`;function f$(t,e,n){let o=l.measured?.outline;if(!o)return r`<p class="drawing hint">${l.measuring_failed??"Reading the mould ..."}</p>`;let i=m$(e,o),s=o.right-o.left,a=Math.max(6,s*.1),d={x:o.left-a,y:-i.top-a,w:s+2*a,h:i.top+2*a};return r`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${VR(t,e)}>
      ${ER(t)} ${IR(t,e,o,i)} ${qR(t,e,o,i)} ${HR()}
      ${NR(t,e,o,i)} ${JR(t,e,o,i)}
      ${R`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function h$(t,e){let n=l.measured.outline,o=m$(t,n),i=n.right-n.left,s=Math.max(6,i*.1),a=o.top+2*s;return{share:(o.top+s-e)/a,per_mm:1/a,w:i+2*s,h:a}}function ER(t){return R`<defs>
    <pattern id="hatch-${t}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${t}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${t}"><path clip-rule="evenodd" d=${p$(g$())} /></clipPath>
  </defs>`}function g$(){let t=l.measured.outline;return t.loops.map(e=>e.map(([n,o])=>[n,o-t.floor]))}function IR(t,e,n,o){let i=t==="cut"?"pour":t,s=e.pour.layers??[],a=(s.length?s.map(d=>jR(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return R`<g clip-path="url(#cavity-${t})">${a.map((d,c)=>R`<path class="whole" d=${d} /><path class="${Fs(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?R`<path fill="url(#hatch-${t})" d=${d} />`:u}`).reverse()}</g>`}function jR(t,e){let{surface:n,to_mm:o}=t;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*e.cut_y;return[i(e.left),i(e.right)]}function qR(t,e,n,o){if(!e.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(l.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,a=(n.left+n.right)/2;return R`<g clip-path="url(#cavity-${t})"><rect class=${Fs(t,"pipe")} x=${a-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function HR(){return R`<path class="wall" fill-rule="evenodd" d=${p$(g$())} />`}function NR(t,e,n,o){let i=(n.left+n.right)/2,s=e.pipe?o.brim:o.line,a=e.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return R`
    ${e.pipe?R`<path class=${Fs(t,"pipe")} d=${cc(n,o)} />${t==="pipe"?R`<path fill="url(#dots-pipe)" d=${cc(n,o)} />`:u}`:u}
    ${t==="dust"?UR(e,n,o):u}
    ${o.ball?R`<circle class=${Fs(t,"decorate")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${a.map(({embed:d,one:c,i:p})=>zR(Fs(t,"decorate"),i,d,c,p))}`}function UR(t,e,n){let o=`M${e.left} ${-n.line}H${e.right}`;return R`<path class="powder" d=${t.pipe?cc(e,n):o} />`}function zR(t,e,n,o,i){let[s,a]=[e+n.middle_mm[0],n.middle_mm[2]],d=Se($(l.run.now,`/decorations/${i}/rod/diameter`)),c=Se($(l.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return R`<circle class=${t} cx=${s} cy=${-a} r=${_$(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),w=d/2*Math.sqrt(1-_*_),b=c*_+2*w,k=-180/Math.PI*Math.atan2(m,p);return R`<rect class=${t} x=${-b/2} y=${-d/2} width=${b} height=${d} rx=${w} ry=${w?d/2:0}
    transform="translate(${s} ${-a}) rotate(${k})" />`}var _$=t=>Math.cbrt(3e3*t.volume_each_ml/(4*Math.PI));function pc(t){let e=(t.decorations??[]).filter((n,o)=>$(l.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return e.length?`Drawn as a ball of its volume, whatever its shape: ${e.join(", ")}.`:""}function JR(t,e,n,o){if(t!=="cut"||!e.cut)return u;let i=Math.max(e.cut.rows,e.cut.columns);return R`${Array.from({length:i-1},(s,a)=>{let d=n.left+(n.right-n.left)*(a+1)/i;return R`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function VR(t,e){let n=O(Tt(l.units,e.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[t]} is shaded. Pour line ${n} below the brim. ${pc(e)}`.trim()}var KR=t=>`set-up ${t}`;function Yt({name:t,title:e,drawing:n,result:o,about:i,form:s}){let a=KR(t),d=()=>fe({part:e,fold:a},s);if(gn())return r`${d()}`;i.some(([m,_])=>Bt(m,_))&&rt(a);let c=l.open.has(a),p=ni().filter(({folds:m})=>m.includes(a)).length;return r`<section class="lane ${t} ${c?"is-open":""}" aria-labelledby="lane-${t}">
    <div class="part-line">
      ${c||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${t}" tabindex="-1">${e}</h2>
        ${o} ${p?r`<p class="lacks">${p} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${c?"true":"false"}
        aria-label="${c?"Close":"Change"} ${e}"
        @click=${()=>qt("open",a)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?r`<div class="lane-body">${d()}</div>`:u}
  </section>`}var _t=t=>r`<p class="order ${l.is_old&&l.plan?"old":""}">${t}</p>`;var $$=()=>x(Rt).length>0,w$=()=>x(we).length>0;function b$(t,e,n,o){return t?.length===e.length?t[o]:t?.find(i=>i.name===n)}function y$(t){let e=t?x(Rt).flatMap((n,o)=>x$(t,o)??[]):[];return Yt({name:"decorate",title:"Decorate",drawing:t&&(()=>Qn("decorate",t)),result:e.length?e.map(n=>YR(t,n)):_t(v$(Rt,Vn)),about:[["run",Rt.at]],form:()=>r`${t?r`<div class="side">${Kn("decorate",t)}</div>`:u}
        <div class="weights">${t?x(Rt).map((n,o)=>QR(t,o)):u}</div>
        ${T$(Rt,Vn,r$)}`})}var v$=(t,e)=>`${x(t).map((n,o)=>e(o)).join(", ")}, not yet with figures.`;function QR(t,e){let n=x$(t,e);return n?ZR(t,n,e):u}function k$(t){let e=t?.dust?.length?x(we).map((n,o)=>tS(t,o)):void 0;return Yt({name:"dust",title:"Dust",drawing:t&&(()=>Qn("dust",t)),result:e??_t(v$(we,Qa)),about:[["run",we.at]],form:()=>r`<div class="side">${t?Kn("dust",t):u}</div>
        <div class="weights">${t?x(we).map((n,o)=>eS(t,o)):u}</div>
        ${T$(we,Qa,Z_)}`})}var x$=(t,e)=>b$(t.decorations,x(Rt),A("run",`/decorations/${e}/name`),e);function T$(t,e,n){return r`<div class="all-questions">
    ${x(t).map((o,i)=>r`<section class="questions" id=${L(t,i)} aria-labelledby="${L(t,i)}-title">
          <div class="part-head">
            <h3 id="${L(t,i)}-title">${e(i)}</h3>
            ${N(t,i,e(i))}
          </div>
          ${fe({part:e(i)},()=>n(i))}
        </section>`)}
  </div>`}function GR(t,e){return r`<h3>${t.name}</h3>
    ${M({key:`decorations.${e}.count`,label:"Bought, spares included",shown:[String(t.casts),""],of:`decorations.${e}.casts`})}`}function YR(t,e){if(e.bought)return _t(r`<b>${e.casts}</b> × ${e.name}, bought.`);let n=e.tray_fills>0?`, in ${e.tray_fills} tray ${e.tray_fills===1?"fill":"fills"}`:"",o=O(mt(l.units,Wt(e,"make_")));return _t(r`Cast <b>${e.casts}</b> of ${e.name} ahead${n}, from <b>${o}</b> of
      ${e.material}${It(t.whole)?", for the whole run":""}.`)}function ZR(t,e,n){return e.bought?GR(e,n):r`<h3>${e.name} ${It(t.whole)?r`<small>for the whole run</small>`:u}</h3>
    ${M({key:`set-up.decorations.${n}.make`,label:`Melt of ${e.material}`,shown:mt(l.units,Wt(e,"make_")),of:`decorations.${n}.make_g`})}
    ${M({key:`decorations.${n}.each`,label:"Each weighs",note:`${S(e.volume_each_ml,2)} ml`,shown:E(l.units,e.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${e.casting_s?r`<p>${En(e.casting_s)} of casting.</p>`:u} ${XR(e,n)}`}function XR(t,e){let{on_top:n,buried:o}=t;if(!n&&!o)return u;let i=a=>a===null?"not known":O(Tt(l.units,a)),s=a=>{let d=(o?.embeds??[]).map(a).filter(c=>c!==null);return d.length?O(Tt(l.units,Math.min(...d))):"nothing near"};return r`<h4>Fit of ${t.name}</h4>
    <dl class="facts">
      ${n?r`<div>
                <dt>Contact circle</dt>
                <dd>${i(n.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${i(n.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Sticks out by</dt>
                <dd>${i(n.stands_proud_mm)}</dd>
              </div>`:u}
      ${o?r`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${s(a=>a.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${s(a=>a.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${s(a=>a.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${s(a=>a.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${S(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${_o(`decorations.${e}.fit`,"How the fit is measured",`decorations.${e}.${n?"on_top":"buried"}`)}`}function tS(t,e){let n=R$(t,e);if(!n)return u;let o=ht(t);return _t(r`<b>${O(mt(l.units,Wt(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var R$=(t,e)=>b$(t.dust,x(we),A("run",`/dust/${e}/name`),e);function eS(t,e){let n=R$(t,e);if(!n)return u;let o=g("run",`/dust/${e}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,s=M({key:`set-up.dust.${e}`,label:n.name,note:ht(t),shown:mt(l.units,Wt(n,"")),of:`${t.place}.dust.${e}.g`});return r`${s}${i?r`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function S$(t){let e=t?.cut;return Yt({name:"cut",title:"Cut",drawing:t&&(()=>Qn("cut",t)),result:e?nS(t,e):_t("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>r`${e?oS(t,e):u}
        <div class="all-questions">${fg()}</div>`})}var nS=(t,e)=>_t(r`Cut <b>${e.bars_each} bars</b> from each, ${e.columns} by ${e.rows}; a bar is
      ${O(E(l.units,t.piece.fresh_g))} on average, fresh.`);function oS(t,e){return r`<div class="side">${Kn("cut",t)}</div>
    <div class="weights">
      ${M({key:"cut.bar",label:"A bar on average, fresh",note:iS(e),shown:E(l.units,t.piece.fresh_g),of:"cut.bars_each"})}
      ${M({key:"cut.offcuts",label:"Offcuts",shown:E(l.units,e.offcuts_g),of:"cut.offcuts_g"})}
      ${sS(e)}
    </div>`}function iS(t){let e=t.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...e)*10)/10,o=Math.ceil(Math.max(...e)*10)/10;return`${S(n,1)} to ${S(o,1)} g`}function sS(t){return t.one_more?.length?r`<ul class="limits">
    ${t.one_more.map(e=>r`<li>Cut to ${e.size_text} along ${e.direction}: ${e.bars} bars from each.</li>`)}
  </ul>`:u}function A$(t){return Yt({name:"label",title:"Label",drawing:aS,result:_t(rS(t)),about:[["run","/label"]],form:()=>r`<div class="more">${d$()} ${t?oc(t):u}</div>`})}function rS(t){let e=t?.piece.label_g;return!t?.label||e===null||e===void 0?"A draft of the label, not yet with figures.":r`Net weight for the label <b>${O(E(l.units,e,0))}</b>, sold in the ${t.label.market}.`}var aS=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${R`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var dt=(t,e)=>Object.keys(g(t,e)??{}),D$=(t,e)=>`${z(t,e)}-name`;function wi({of:t,at:e,label:n,add:o,blank:i,then:s}){let a=D$(t,e),d=()=>{let c=document.getElementById(a),p=c.value.trim();if(!p)return c.focus();if(c.value="",dt(t,e).includes(p))return Nt(s(p)());W(t,`${p} added`,`${e}/${B(p)}`,i,s(p))};return r`<div class="row">
    <div class="field">
      <label for=${a}>${n}</label>
      <input
        id=${a}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&d()}}
      />
    </div>
    <button type="button" @click=${d}>${o}</button>
  </div>`}var mc;function Cs({of:t,at:e,name:n,label:o,also:i=a=>a,put:s}){let a=`${z(t,e)}-${dt(t,e).indexOf(n)}-called`,d=p=>{let m=p.target.value.trim(),_=m!==n&&dt(t,e).includes(m);if(mc=_?{id:a,words:`Another is called ${m} already`}:void 0,h({typed:void 0}),!m||_||m===n)return;let w=b=>i(fc(b,e,n,m),m);if(!s)return oe(t,`${n} is called ${m}`,w,H(a));s(w,m),q(`${n} is called ${m}`),G(H(a))},c=mc?.id===a?mc.words:void 0;return r`<div class="field ${c?"wants":""}">
    <label for=${a}>${o}</label>
    <input
      id=${a}
      .value=${F(l.typed?.key===a?l.typed.text:n)}
      @input=${p=>h({typed:{key:a,text:p.target.value}})}
      @change=${d}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${c?"true":"false"}
      aria-describedby=${c?`${a}-said`:u}
    />
    ${ft(a,c)}
  </div>`}function fc(t,e,n,o){let i=Object.entries($(t,e)??{}).map(([s,a])=>[s===n?o:s,a]);return P(t,e,Object.fromEntries(i))}function To(t,e,n,o=n){let i=s=>$n(P(s,`${e}/${B(n)}`,void 0),e);return r`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>oe(t,`${o} removed`,i,H(D$(t,e)))}
    >
      ×
    </button>
  </div>`}var be=()=>l.plan?.piece.cost?.materials.map(t=>t.name)??[],X=t=>l.fats.find(e=>e.id===t)?.name??t,hc=8;function Ro({key:t,label:e,offers:n,among:o,taken:i,take:s}){let a=`find-${t}`,d=l.finding?.key===t?l.finding.text:"",c=(d.trim()?lS(d,o):n).filter(b=>!i(b)),p=b=>{h({finding:void 0}),s(b)},m=d.trim(),_=m!==""&&!i(m)&&!c.some(b=>Ht(X(b))===Ht(m)),w=()=>{if(!m)return;let b=c.find(U=>Ht(X(U))===Ht(m)||Ht(U)===Ht(m)),k=c.length===1?c[0]:void 0;(b??k??_)&&p(b??k??m)};return r`<div class="picker" role="group" aria-labelledby="${a}-label">
    <p class="question" id="${a}-label">${e}</p>
    <div class="field">
      <label for=${a}>Find it by its name</label>
      <input
        id=${a}
        .value=${d}
        @input=${b=>h({finding:{key:t,text:b.target.value}})}
        @keydown=${b=>{b.key==="Enter"&&w()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${c.slice(0,hc).map(b=>r`<button type="button" @click=${()=>p(b)}>${X(b)}</button>`)}
      ${_?r`<button type="button" @click=${()=>p(m)}>Add "${m}"</button>`:u}
    </div>
    ${c.length>hc?r`<p class="hint">${c.length-hc} more: type a part of the name.</p>`:u}
  </div>`}function lS(t,e){let n=e?[]:be(),o=Ht(t).split(/\s+/).filter(Boolean),i=l.fats.filter(a=>fn(a,t)!==void 0).map(({id:a})=>a),s=a=>o.every(d=>Ht(X(a)).includes(d));return[...new Set([...n.filter(a=>s(a)||i.includes(a)),...i])]}var vn=t=>f({...t,of:"studio"});function P$(){let t=(e,n,o)=>D({of:"studio",name:`ready ${e}`,pointers:[e],summary:r`<span>${n}<small>${dt("studio",e).join(", ")}</small></span>`,body:o});return r`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${t("/lye_solutions","Lye solutions",pS)} ${t("/blends","Melted blends of fats",hS)}
    </div>
  </section>`}var uS=["/prices","/packs","/have","/waste"],dS=t=>(e,n)=>uS.reduce((o,i)=>$(o,`${i}/${B(t)}`)===void 0?o:fc(o,i,t,n),e);function cS(t,e){let n=i=>i===t?e:Array.isArray(i)?i.map(s=>s===t?e:s):i&&typeof i=="object"&&i.name===t?{...i,name:e}:i,o=["/pour/lye_from","/pipe/lye_from","/pour/blend","/pipe/blend"];return i=>o.reduce((s,a)=>{let d=$(s,a);return d===void 0?s:P(s,a,n(d))},i)}function O$({at:t,name:e,label:n,body:o}){let i=(a,d)=>He([["studio",a],["run",cS(e,d)]]),s=`${t}/${B(e)}`;return r`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${To("studio",t,e)}
    </div>
    ${C("studio",s)}
    <div class="row">${Cs({of:"studio",at:t,name:e,label:n,also:dS(e),put:i})}</div>
    ${o}
    <div class="row">
      ${vn({label:"Made on",at:`${s}/made_on`,date:!0,optional:!0,short:!0})}
      ${vn({label:"Made by",at:`${s}/from`,optional:!0,short:!0})}
      ${vn({label:"Note",at:`${s}/note`,optional:!0})}
    </div>
  </div>`}var bi="/lye_solutions",pS=()=>r`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${dt("studio",bi).map(t=>O$({at:bi,name:t,label:"What you call it",body:mS(t)}))}
    ${wi({of:"studio",at:bi,label:"Another solution, such as Lye jug A",add:"Add the solution",blank:{strength:"",strength_range:["",""],kept_at:""},then:t=>Z("studio",`${bi}/${B(t)}/alkali`)})}`;function mS(t){let e=`${bi}/${B(t)}`,n=A("studio",`${e}/alkali`),o=n||"alkali",i=A("studio",`${e}/strength`);return r`${T({of:"studio",question:"Which alkali is dissolved in it?",at:`${e}/alkali`,chosen:n||void 0,answers:[["NaOH","NaOH, sodium hydroxide"],["KOH","KOH, potassium hydroxide"]],puts:s=>s,then:()=>`${e}/strength`})}
    <div class="row">
      ${vn({label:`Strength: pure ${o} in 100 g of the solution`,at:`${e}/strength`,unit:"%"})}
      ${vn({label:"Coldest it stands",at:`${e}/kept_at`,hint:"With its unit: 18 \xB0C, 64 \xB0F. Strong lye crystallises in the cold."})}
    </div>
    <p role="status">${fS(i,o)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${vn({label:"as weak as",at:`${e}/strength_range/0`,unit:"%",short:!0})}
      ${vn({label:"or as strong as",at:`${e}/strength_range/1`,unit:"%",short:!0})}
    </div>
    ${C("studio",`${e}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${ie({of:"studio",at:`${e}/made_from`,name:`what ${t} is dissolved of`,title:"Dissolved by yourself",add:"I dissolve it myself",blank:{purity:""},body:()=>r`<div class="row">
            ${vn({label:`Purity of the dry ${o}`,at:`${e}/made_from/purity`,unit:"%",short:!0})}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`})}`}function fS(t,e){let n=/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(t)?.[1],o=Number(n?.replace(",","."));if(!n||o>=100)return`As much ${e} as water is 50 %.`;let i=s=>String(Math.round(s*100)/100);return`So ${i(o)} g of pure ${e} and ${i(100-o)} g of water in 100 g.`}var Ls="/blends",hS=()=>r`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${dt("studio",Ls).map(t=>O$({at:Ls,name:t,label:"What you call it",body:gS(t)}))}
    ${wi({of:"studio",at:Ls,label:"Another blend, such as Hard fats",add:"Add the blend",blank:{fats:[]},then:t=>H(`find-blend ${t}`)})}`;function gS(t){let e={of:"studio",at:`${Ls}/${B(t)}/fats`,stays:!0},n=x(e),o=i=>n.some(s=>s.fat===i);return r`${C("studio",e.at)}
  ${n.map((i,s)=>r`<div class="row" id=${L(e,s)}>
        ${vn({label:X(String(i.fat)),at:`${e.at}/${s}/share`,unit:"%",short:!0})}
        ${N(e,s,X(String(i.fat)))} ${C("studio",`${e.at}/${s}/fat`)}
      </div>`)}
  ${n.length?r`<p class="total" role="status">
          ${ri("Its fats",n.map(i=>i.share))}
        </p>`:u}
  ${Ro({key:`blend ${t}`,label:n.length?"Another fat of it":"Which fats are in it?",offers:_S(),among:"fats",taken:o,take:i=>j(e,{fat:i,share:""},X(i))})}`}var _S=()=>[...new Set(["pour","pipe"].flatMap(t=>{let e=l.formulas[t]?.now.fats;return Array.isArray(e)?e.map(n=>String($(n,"/fat")??"")).filter(Boolean):[]}))],M$=t=>x({of:"studio",at:`${Ls}/${B(t)}/fats`}).map(({fat:e})=>String(e)),yi=t=>{let e=g("studio",`${bi}/${B(t)}`)??{},[n,o]=[e.alkali,e.strength].map(i=>String(i??""));return{alkali:n,words:[t,[n,o].filter(Boolean).join(" ")].filter(Boolean).join(": ")}};var Ws=t=>`/${t}/lye_from`,Bs=t=>`/${t}/blend`;function Es(t){let e=dt("studio","/lye_solutions").length>0||g("run",Ws(t))!==void 0,n=dt("studio","/blends").length>0||g("run",Bs(t))!==void 0;if(!e&&!n)return u;let o=[...F$(t),C$(t)].filter(Boolean).join(", ");return D({name:`/${t} ready`,pointers:[Ws(t),Bs(t)],summary:`From what stands ready${o&&`: ${o}`}`,body:()=>r`${e?wS(t):u} ${n?yS(t):u}`})}function F$(t){let e=g("run",Ws(t));return typeof e=="string"?[e]:tt("run",Ws(t)).map(String)}var $S=t=>tt(t,"/alkali").map(e=>String($(e,"/alkali")));function wS(t){let e=Ws(t),n=z("run",e),o=F$(t),i=$S(t),s=[...new Set([...dt("studio","/lye_solutions"),...o])],a=s.filter(m=>o.includes(m)||i.includes(yi(m).alkali)),d=s.filter(m=>!a.includes(m)),c=yt("run",e),p=m=>{let{alkali:_}=yi(m),w=o.includes(m),b=o.filter(Pt=>Pt!==m&&(w||yi(Pt).alkali!==_)),k=w?b:[...b,m],U=k.length>1?k:k[0];W("run",`${m}: ${w?"no":"yes"}`,e,U)};return r`<div class="field asked ${c?"wants":""}">
    <p class="question" id="${n}-label">
      Lye solution that is weighed in place of dry ${i.length?Oe(i):"alkali"}
    </p>
    <div class="choice" role="group" id=${n} tabindex="-1" aria-labelledby="${n}-label">
      ${a.map(m=>r`<button type="button" aria-pressed=${o.includes(m)?"true":"false"} @click=${()=>p(m)}>
            ${yi(m).words}
          </button>`)}
    </div>
    ${ft(n,c,o.length?void 0:"None chosen: the alkali is weighed dry.")}
    ${d.length?r`<p class="hint">Of another alkali than this formula's: ${d.map(m=>yi(m).words).join(", ")}.</p>`:u}
  </div>`}var C$=t=>{let e=g("run",Bs(t));return typeof e=="string"?e:A("run",`${Bs(t)}/name`)};function bS(t,e){let n=tt(t,"/fats").map(({fat:s})=>String(s)),o=new Set(n.flatMap(s=>{let a=l.fats.find(({id:d})=>d===s);return a?[a.id,a.name,a.inci,...a.also_called]:[s]})),i=new Set([...o].map(s=>s.toLowerCase()));return M$(e).every(s=>i.has(s.toLowerCase()))}var gc="\0singly";function yS(t){let e=Bs(t),n=C$(t),o=[...new Set([...dt("studio","/blends"),...n?[n]:[]])],i=o.filter(d=>d===n||bS(t,d)),s=o.filter(d=>!i.includes(d)),a=g("run",`${e}/share`)!==void 0;return r`${T({question:"Blend of fats that is weighed",at:e,chosen:n||gc,answers:[[gc,"None: each fat by itself"],...i.map(d=>[d,d])],puts:d=>d===gc?void 0:d,hint:s.length?`With fats that this formula has not: ${s.join(", ")}.`:void 0})}
  ${n?a?r`<div class="row">
            ${f({label:`${n}: share of all fats of the formula`,at:`${e}/share`,unit:"%",optional:!0,short:!0})}
          </div>`:r`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${()=>W("run","Its share",e,{name:n,share:""},Z("run",`${e}/share`))}
            >
              Take a share of my own
            </button>`:u}`}var Yn="/pour/layers",Gn={at:Yn,in_order:!0},_c=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Ya=()=>x(Gn);function vS(){let t=e=>Ya().some(n=>e in n);return _c.map(([e])=>e).find(t)??(t("rest")?"depth":"parts")}function W$(t){let e=Ya(),n=vS();return e.length?r`<h3>
      Layers, lowest first ${t&&ht(t)?r`<small>${ht(t)}</small>`:u}
    </h3>
    ${T({question:"All of them by",at:Yn,is_told_elsewhere:!0,chosen:n,answers:_c,puts:o=>xS(o,t)})}
    <div class="items">${e.map((o,i)=>TS(o,i,n,t))}</div>
    ${Y(Gn,"One more layer on top",()=>j(Gn,{name:kS(e),[n]:""},"layer"))}`:r`<p class="choice">
      ${Y(Gn,"Pour it in layers",()=>j(Gn,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function kS(t){for(let e=t.length+1;;++e)if(!t.some(n=>n.name===`Layer ${e}`))return`Layer ${e}`}function B$(t,e,n){let o=t?.pour.layers?.[n];return o?.name===e.name?o:void 0}function xS(t,e){let n=Ya(),o=l.is_old?void 0:e,i=(s,a)=>{let d=B$(o,s,a);return t==="parts"||!d||t==="depth"&&"tilted"in s?"":t==="depth"?`${S(d.to_mm-d.from_mm,3)} mm`:`${S(d.mass_each_g,3)} g`};return n.map((s,a)=>{let d=Ga(a),c=t!=="parts"&&n.length>1&&a===n.length-1;return{...d,...c?{rest:!0}:{[t]:i(s,a)}}})}var Ga=t=>pt("run",`${Yn}/${t}`,[..._c.map(([e])=>e),"rest"]);function TS(t,e,n,o){let i=`${Yn}/${e}`,s=String(t.name)||`Layer ${e+1}`,a=B$(o,t,e);return r`<div class="part" id=${L(Gn,e)} role="group" aria-label="Layer ${s}">
    ${a&&o?RS(o,a,e):r`<p class="part-title">${s}</p>`} ${C("run",i)}
    ${AS(t,e,n,s)}
    ${o&&a?a.colours.map((d,c)=>SS(o,d,e,c)):u}
    ${D({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>r` ${f({label:"Name of the layer",at:`${i}/name`})} ${MS(i,s)} ${FS(i,e)}
        ${N(Gn,e,s)}`})}
  </div>`}function RS(t,e,n){return M({key:`pour.layer.${n}`,label:e.name,note:`${bu(Tt(l.units,e.to_mm-e.from_mm))} thick, ${bu(E(l.units,e.mass_each_g))} each`,shown:e.g_text===void 0?E(l.units,e.g):mt(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.g`})}function SS(t,e,n,o){return M({key:`pour.layer.${n}.${o}`,label:e.name,note:e.teaspoons?`about ${S(e.teaspoons,1)} tsp`:"",shown:yo(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.colours.${o}.g`})}function AS(t,e,n,o){if(n==="parts")return DS(t,e,o);let i="rest"in t;return r`${i?u:f({label:`${o}, ${n}`,at:`${Yn}/${e}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?OS(e,n):PS(e,n)}
    >
      Takes the rest
    </button>`}function DS(t,e,n){let o=`${Yn}/${e}/parts`,i=s=>()=>{h({typed:void 0}),V("run",o,Math.max(1,(Number(t.parts)||0)+s))};return r`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${f({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function PS(t,e){let n=Ya().map((o,i)=>i===t?{...Ga(i),rest:!0}:o.rest?{...Ga(i),[e]:""}:o);W("run","takes the rest",Yn,n)}function OS(t,e){let n=`${Yn}/${t}`;W("run","amount of the layer",n,{...Ga(t),[e]:""},Z("run",`${n}/${e}`))}function MS(t,e){let n={at:`${t}/colours`,in_order:!0};return r`${x(n).map((o,i)=>{let s=`${n.at}/${i}`,a=String(o.name)||`colour ${i+1}`;return r`<div class="part" id=${L(n,i)} role="group" aria-label="${a} in ${e}">
      <div class="part-head">
        <p class="part-title">Colour: ${a}</p>
        ${N(n,i,a)}
      </div>
      ${C("run",s)}
      <div class="row">
        ${f({label:"Colour",at:`${s}/name`})}
        ${f({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${f({label:"Bulk density (for spoons)",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${jn("run",s,a)}
    </div>`})}
  ${Y(n,"Add a colour",()=>j(n,{name:"",rate:""},"colour"))}`}var L$=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function FS(t,e){let n=`${t}/tilted`,o=g("run",`${n}/low_side`);return e===x(Gn).length-1&&g("run",n)===void 0?r`<p class="hint">The last layer is poured level.</p>`:ie({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>r`${f({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${T({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:L$,puts:s=>s})}
        ${D({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!L$.some(([s])=>s===o),body:()=>f({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var Ce=()=>$(l.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function $c(t,e){let n=t.pour.depth_mm+t.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(e*2)/2),Math.floor(n*2)/2-.5),i=Ce()==="depth"?n-o:o;h({typed:void 0}),V("run",`/pour/line/${Ce()}`,`${S(i,2)} mm`)}function E$(t){let e=t.pour.depth_mm+t.pour.below_brim_mm,n=Se($(l.run.now,`/pour/line/${Ce()}`));return n===void 0?t.pour.below_brim_mm:Ce()==="depth"?e-n:n}function CS(t,e){let n=t.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(t.pointerId);let i=a=>e((a.clientY-t.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.removeEventListener(a,s)};n.addEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.addEventListener(a,s)}function LS(t){if(!l.measured)return u;let e=t.pour.depth_mm+t.pour.below_brim_mm,n=E$(t),{share:o,h:i}=h$(t,e-n),s=c=>CS(c,p=>$c(t,n+p*i)),a=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),$c(t,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),r`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(e)}
    aria-valuenow=${S(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${O(Tt(l.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${a}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function WS(t){let{pour:e}=t,n=O(Tt(l.units,e.below_brim_mm)),o=e.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=t.cut?"the loaf":"each",s=ht(t);return _t(r`${o}, <b>${O(E(l.units,e.mass_each_g))}</b> ${i}; make
      <b>${O(E(l.units,e.make_g))}</b>${s?` for ${s}`:""}.`)}var I$=()=>Ce()==="depth"?"Depth":"Below brim";function j$(t){return Yt({name:"pour",title:"Pour",drawing:t&&(()=>Qn("pour",t)),result:t?WS(t):_t(`${BS()}.`),about:[["run","/pour"]],form:()=>r`${t?ES(t):IS()}
        <div class="more">
          ${Za("pour")} ${Es("pour")} ${W$(t)} ${aa("pour")}
        </div>`})}function BS(){let t=A("run",`/pour/line/${Ce()}`);return t?`${t} ${Ce()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function ES(t){let{pour:e}=t,n=`${t.place}.pour`,o=i=>()=>$c(t,E$(t)+i);return r`<div class="side">
      ${Kn("pour",t,LS(t))} ${q$(t)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${f({label:I$(),at:`/pour/line/${Ce()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${M({key:"pour.each",label:"Weigh into each",shown:E(l.units,e.mass_each_g),note:`${S(e.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${M({key:"pour.mm",label:"1 mm more or less",shown:St(l.units,e.ml_per_mm,2),note:`${ze(e.ml_per_mm*e.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${M({key:"set-up.pour.make",label:"Base to make",note:ht(t),shown:E(l.units,e.make_g),of:`${n}.make_g`})}
      ${M({key:"pour.density",label:"Density",shown:[`${e.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var IS=()=>r`<div class="side">
    ${q$()} ${C("run","/pour/line")}
    ${f({label:I$(),at:`/pour/line/${Ce()}`,unit:"mm"})}
  </div>`,Za=t=>r`<button type="button" @click=${()=>Kt(t)}>
    Change the formula of the ${t==="pour"?"base":"topping"}
  </button>`;function q$(t){let e=n=>{if(n===Ce())return;let o=t&&!l.is_old?t.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;W("run","pour line","/pour/line",{[n]:o===void 0?"":`${S(o,3)} mm`})};return at("The pour line is measured",Ce(),[["below_brim","From the brim"],["depth","From the floor"]],e)}var jS=[0,50,80,100];function H$(t){let e=t?.pipe;return Yt({name:"pipe",title:"Pipe",drawing:e&&(()=>Qn("pipe",t)),result:e?qS(t,e):_t("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>e?HS(t,e):NS()})}function qS(t,e){let n=ht(t);return _t(r`Pipe <b>${S(e.volume_each_ml,0)} ml</b> on each, ${O(E(l.units,e.mass_each_g))} at this
      whipped density; make <b>${O(E(l.units,e.make_g))}</b>${n?` for ${n}`:""}.`)}function HS(t,e){return r`<div class="side">
      ${Kn("pipe",t)}
      ${M({key:"pipe.each",label:"Topping on each",shown:St(l.units,e.volume_each_ml),note:`${S(e.in_headspace_each_ml,1)} ml of it below the brim`,of:`${t.place}.pipe.volume_each_ml`})}
      ${M({key:"set-up.pipe.make",label:"Topping to make",note:ht(t),shown:E(l.units,e.make_g),of:`${t.place}.pipe.make_g`})}
      ${M({key:"pipe.density",label:"Whipped density",note:`overrun ${S(e.overrun_percent,0)} %`,shown:[`${e.density_g_per_ml} g/ml`,""],of:`${t.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${Za("pipe")} ${Es("pipe")}
    </div>
    <div class="weights">${sd(e)} ${J$()} ${US(t)} ${GS(t)}</div>
    <div class="more">${id(e)} ${od()}</div>`}var Is=t=>t===0?"pipe":`pipe.whipping${t}`,js=(t,e)=>`${t.place}.pipe.whippings.${e}`;function N$(t,e){let n=Vr(t,e);return n?r`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function NS(){return r`<div class="more">${id()}</div>
    <div class="side">${J$()} ${g("run","/pipe/whip_now")===void 0?u:z$()}</div>
    <div class="weights">${sd()} ${Za("pipe")} ${Es("pipe")}</div>
    <div class="more">${od()}</div>`}var U$=t=>ht(t)?r`<small>${ht(t)}</small>`:u;function US(t){return r`<h3>Today's bowl ${U$(t)}</h3>
    ${z$()} ${t.whippings.map((e,n)=>zS(t,e,n))}`}function zS(t,e,n){let o=e.pieces_now,i=o==null?0:e.pieces-o,s=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${e.pieces} to make.`;return r`${N$(t,e)}
  ${o==null?u:M({key:`${Is(n)}.now`,label:"Enough for",note:s,shown:[K(o,"piece"),""],size:"weigh",of:`${js(t,n)}.pieces_now`})}
  ${VS(t,e,n)}`}function z$(){let t=g("run","/pipe/whip/holds"),e=t===void 0?gs():{holds:t,net:""};return ie({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:JS})}function JS(){return r`<div class="row">
    ${f({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${_s("/pipe/whip_now")}
  </div>`}function VS(t,e,n){return e.readings?.length?D({name:`${Is(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>KS(t,e,n)}):u}function KS(t,e,n){return r`<table class="readings">
      <caption>
        If the weigh-cup reads
      </caption>
      <thead>
        <tr>
          <th scope="col">net</th>
          <th scope="col">overrun</th>
          <th scope="col">pipes</th>
        </tr>
      </thead>
      <tbody>
        ${e.readings?.map(o=>r`<tr class=${o.planned?"planned":""}>
              <th scope="row">${S(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${S(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${_o(`${Is(n)}.readings`,"Show the calculation",`${js(t,n)}.readings`)}`}function J$(){let t="/pipe/fills_headspace",e=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(A("run",t))?.[1]?.replace(",",".")),n=Bt("run",t);return r`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${In("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${jS.map(o=>r`<button
            type="button"
            aria-pressed=${o===e?"true":"false"}
            @click=${()=>V("run",t,`${o} %`)}
          >
            ${QS(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${f({label:"Headspace filled, as a share",at:t,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function QS(t){let e=52*(t/100);return r`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${R`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-e/2} y="18" width=${e} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function GS(t){let e=t.whippings.map(i=>({one:i,words:YS(i)})).filter(({words:i})=>i),n=t.whippings[0],o=n?.limits??[];return!n||!o.length&&!e.length?u:r`<h3>Limits of whisk, bowl and time ${U$(t)}</h3>
    ${e.map(({one:i,words:s})=>r`${N$(t,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>r`<li class=${i.sets?"binds":""}>
            ${i.sets?r`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${_o("pipe.limits","How the limits come about",`${js(t,0)}.limits`)}`}function YS({piping_s:t,lye_spoonfuls:e}){return[t?`${En(t)} of piping`:"",e?`${e.count} spoonfuls of lye, ${En(e.altogether_s)}`:""].filter(Boolean).join("; ")}function K$(t){return Yt({name:"lye",title:"Lye",drawing:XS,result:t?V$(t).map(ZS):_t("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>r`${t?r`<div class="more jugs">${V$(t).map(t1)} ${n1(t)}</div>`:u}
        <div class="more">${a$()} ${l$(t)}</div>`})}function V$(t){let{pieces:e}=t.batch,n={slot:"pour",title:t.pipe?"Lye for the base":"Lye",batter:t.pour,place:`${t.place}.pour`,pieces:e,key:"pour"},o=t.whippings.map((i,s)=>{let a=Vr(t,i);return{slot:"pipe",title:`Lye for the topping${a&&`, ${a}`}`,batter:i,place:js(t,s),pieces:e,key:Is(s)}});return[n,...o]}function ZS({title:t,batter:e,slot:n,pieces:o}){let i=Wn(n,o).length?" \u26A0":"";return _t(r`${t}: ${S(e.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${me(e.superfat_percent.effective)}${i}</b>.`)}var XS=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${R`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function t1({slot:t,title:e,batter:n,place:o,pieces:i,key:s}){let{effective:a}=n.superfat_percent,d=Wn(t,i).length>0,c=`danger-set-up-${s.replaceAll(".","-")}`,p=s===t;return r`<div class="jug">
    <h3>${e} <small>${n.formula}</small></h3>
    ${M({key:`set-up.${s}.strength`,label:"Lye strength",note:`water ${S(n.water_to_pure_alkali,2)} : 1 to alkali; water ${S(n.water_percent_of_fats,1)} % of the fats`,shown:[`${S(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${M({key:`set-up.${s}.superfat`,label:"Superfat as weighed",shown:[`${me(a)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:s==="pour"?"superfat_as_weighed":void 0})}
    ${os(t,c,i)} ${Q$(n.superfat_percent)} ${e1(n,o,s)}
    ${!p||g(t,"/superfat")===void 0?u:f({label:"Planned superfat",of:t,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:l.formulas[t]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Q$(t){let{low:e,high:n,likely_low:o,likely_high:i,uncertainties:s}=t,a=`It lies between ${me(e)} and ${me(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${me(o)} and ${me(i)}.`,c=s[0],p=c?r` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return wu(e)?r`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${a}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:r`<p class="aside of-plan">${a}${d} Some fat is left over even at the lowest.${p}</p>`}function e1(t,e,n){return t.heat?r`${G$(t.heat)} ${_o(`${n}.heat`,"How the heat is worked out",`${e}.heat`)}`:u}function G$(t){let e=i=>O(nh(l.units,i)),n=t.cooling.map(i=>`${i.shortest_min*60?En(i.shortest_min*60):"at once"} to ${En(i.longest_min*60)} in ${i.in}`),o=t.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${e(t.water_at_c)}: the lye may reach ${e(t.peak_c)}; it boils at ${e(t.boils_at_c)}.`;return r`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${t.at_pour_c===null?"":` Lye and fats meet at about ${e(t.at_pour_c)}.`}
  </p>`}function n1(t){let e=t.lye_pot;if(!e)return u;let{units:n}=l,o=(i,s,a,d,c="")=>M({key:`pot.${i}`,label:s,note:c,shown:a,size:"weigh",of:`${t.place}.lye_pot.${d}`});return r`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${S(e.strength_percent,1)} %${ht(t)&&`; ${ht(t)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",mt(n,Wt(e,"water_")),"water_g")}
    ${e.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,mt(n,Wt(i,""),"down"),`alkalis.${s}.g`))}
    ${o("lye","Lye solution in the pot",mt(n,Wt(e,"lye_")),"lye_g",o1(e))}
    ${e.shares.map((i,s)=>r`${o(`share.${s}`,`Out of it for ${i.batter}`,mt(n,Wt(i,"lye_"),"down"),`shares.${s}.lye_g`,`superfat then ${me(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,mt(n,Wt(i,"top_up_")),`shares.${s}.top_up_g`):u}
        ${os(s===0?"pour":"pipe","",t.batch.pieces)}
        ${i.superfat?Q$(i.superfat):u}`)}
    ${e.left_g?r`<p class="aside of-plan">
            ${O(mt(l.units,{g:e.left_g,g_text:e.left_g_text,oz_text:e.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${e.heat?G$(e.heat):u}
  </div>`}function o1(t){if(t.full_pot_g===null)return"";let{g_text:e,oz_text:n,...o}=Wt(t,"lye_"),i=mt(l.units,{...o,g:t.full_pot_g,g_text:t.full_pot_g_text,oz_text:t.full_pot_oz_text});return`${O(i)} with the pot: make up with water to that after cooling`}var qs=new Map,i1=()=>qs.clear(),s1=t=>typeof t?.owned=="number"?t.owned:void 0;function wc(t){let e=Vt(t,l.files?.moulds);return qs.has(e)||(qs.set(e,void 0),r1(e)),qs.get(e)}async function r1(t){try{qs.set(t,s1($t((await Ot(t)).text))),nt()}catch(e){if(!(e instanceof v))throw e}}async function Y$(t,e){let n=wc(t);n!==void 0&&(V("studio",e,n),q(`${n} kept in the studio`),await a1(Vt(t,l.files?.moulds)),ut())}async function a1(t){let e=await Ct(Jt,t);e.shipped||e.theirs||(xt(e,P(e.now,"/owned",void 0)),await Ie(e),i1())}function Xa(t=!1){let e=(n,o,i,s=!1)=>f({of:"studio",label:o,at:`/work/${n}`,unit:i,optional:!0,takes_part:!0,is_due:s,short:!0});return[e("each_batch","Each batch","min",t),e("each_piece_made","Each piece made","s"),e("each_tray_fill","Each tray fill","min"),e("each_piece_packed","Each piece packed","s")]}var tl=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],el=t=>t[0].toUpperCase()+t.slice(1),bc=t=>f({...t,of:"studio"});function Z$(){return!gn()&&l.run.file&&l.open.has("folded studio days")&&Aa("run"),r`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${D({of:"studio",name:"days",pointers:["/days",...Fe()?[]:["/work"]],summary:r`<span>When you work${r`<small>${l1()}</small>`}</span>`,body:u1})}
  </section>`}function l1(){let t=g("studio","/days/making")??{};return tl.filter(e=>t[e]).map(e=>`${el(e)} ${String(t[e])}`).join(", ")}var u1=()=>r`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${tl.map(t=>bc({label:el(t),at:`/days/making/${t}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${C("studio","/days")} ${C("studio","/days/making")} ${d1()} ${c1()} ${m1()}
    ${Fe()?r`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:r`<p class="question">How long the work takes you</p>
            <div class="row">${Xa(g("studio","/days")!==void 0)}</div>
            ${C("studio","/work")}`}`;function d1(){let t="/days/small_jobs",e=z("studio",t),n=tt("studio",t),o=a=>{let d=tl.filter(p=>p===a!==n.includes(p)),c=p=>$n(P(p,t,d.length?[...d]:void 0),"/days");oe("studio",`${el(a)}: ${n.includes(a)?"no":"yes"}`,c)},i=Bt("studio",t),s=tl.filter(a=>n.includes(a)||!A("studio",`/days/making/${a}`));return r`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${e}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${e} tabindex="-1" aria-labelledby="${e}-label">
      ${s.map(a=>r`<button type="button" aria-pressed=${n.includes(a)?"true":"false"} @click=${()=>o(a)}>
            ${el(a)}
          </button>`)}
    </div>
    ${ft(e,i,"Without any, these wait for a making day.")}
  </div>`}var Hs={of:"studio",at:"/days/off",and:t=>$n(t,"/days")};function c1(){return r`<p class="question">Days off and holidays</p>
    ${x(Hs).map((t,e)=>p1(String(t),e))}
    ${Y(Hs,"Add a day off",()=>j(Hs,"","A day off"))}`}function p1(t,e){let n=`/days/off/${e}`,[o,i=""]=t.split("/"),s=z("studio",n),a=yt("studio",n),d=(m,_)=>V("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,w,b)=>r`<div class="field short ${a?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${F(w)}
        @input=${k=>b(k.target.value)}
        @blur=${rs}
        aria-invalid=${a?"true":"false"}
        aria-describedby=${a?`${s}-said`:u}
      />
      ${m===s?ft(s,a):u}
    </div>`,p=o?`off on ${bt(o)}`:`day off ${e+1}`;return r`<div class="row" id=${L(Hs,e)} role="group" aria-label=${p}>
    ${c(s,"First day off",o,m=>d(m,i))}
    ${c(`${s}-last`,"Last, if there are several",i,m=>d(o,m))} ${N(Hs,e,p)}
  </div>`}function m1(){let t=(e,n,o)=>bc({label:n,at:`/days/${e}`,count:!0,optional:!0,short:!0,hint:o});return r`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${t("pots_owned","Pots for the base")} ${t("bowls_owned","Bowls for the topping")}
      ${t("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${t("rack_places","Pieces that can cure at once")}
      ${bc({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${$(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?r`<p class="hint">Without the hours of a making day these are of no use.</p>`:u}`}var f1={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},X$=t=>({run:t,studio:t}),yc=t=>X$(`/losses/${t}`);function vc(t,e){return f1[t].map(({name:n,label:o,unit:i,optional:s})=>Dt(X$(`/losses/${t}/${n}`),{label:e?`${e}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:s}))}var kc={holds:"",paid:""},nl=t=>({of:"studio",at:`/packs/${B(t)}`,in_order:!0,and:(e,n)=>n?e:ai($n(e,"/packs"),[`/serves_as/${B(t)}`])});function ew(t){let e=l.fats.find(n=>n.id===t||n.name===t);return e?[e.id,e.name,e.inci,...e.also_called]:[t]}function nw(t,e){let n=new Set(ew(e).map(o=>o.toLowerCase()));return dt("studio",t).find(o=>n.has(o.toLowerCase()))}var So=t=>nw("/packs",t),ow=t=>be().includes(t)||l.fats.some(e=>e.id===t)?"g":void 0,iw="money packs";function sw(t){return r`${dt("studio","/packs").map(e=>h1(e,t))}
  ${Ro({key:"pack",label:"Which material comes in packs?",offers:be(),taken:e=>So(e)!==void 0,take:ol})}`}function h1(t,e){let n=nl(t),o=X(t);return r`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${x(n).map((i,s)=>_1(n,s,o,ow(t),e))}
    <div class="row">
      ${Y(n,r`Another pack of ${o}`,()=>j(n,kc,`A pack of ${o}`))}
      ${f({of:"studio",label:"Lost beside the batch",at:`/waste/${B(t)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
      ${g1(t)}
    </div>
  </div>`}var tw=t=>`/serves_as/${B(t)}`;function g1(t){let e=tw(t),n=A("studio",e),o=new Set(ew(t)),i=[...new Set([...be(),...dt("studio","/packs")])].filter(a=>!o.has(a)&&g("studio",tw(a))===void 0),s=a=>d=>$n(P(d,e,a||void 0),"/serves_as");return!n&&(be().some(a=>o.has(a))||!i.length)?u:gt({label:"Another make of",of:"studio",at:e,answers:i.map(a=>[a,X(a)]),unsaid:"nothing: a material of its own",optional:!0,take:a=>oe("studio",`${X(t)}: ${a?X(a):"a material of its own"}`,s(a))})}function _1(t,e,n,o,i){let s=`${t.at}/${e}`,a=(c,p,m={})=>f({of:"studio",label:p,at:`${s}/${c}`,short:!0,...m}),d=g("studio",`${s}/density`)!==void 0||Bt("studio",`${s}/holds`);return r`<div class="row" id=${L(t,e)} role="group" aria-label="Pack ${e+1} of ${n}">
    ${a("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${a("paid","Paid for it",{told:i})} ${$1(s)}
    ${a("as_of","Day of the price",{optional:!0,date:!0})}
    ${d?a("density","Density of what it holds",{unit:"g/ml",optional:!0}):u}
    ${N(t,e,`pack ${e+1} of ${n}`)}
  </div>`}function $1(t){let e=`${t}/from`,n=dt("studio","/sellers");return n.length?gt({label:"From",of:"studio",at:e,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):f({of:"studio",label:"From",at:e,optional:!0,short:!0})}function ol(t){let e=`/packs/${B(t)}`,[n,o]=[`/prices/${B(t)}`,`/money/prices/${B(t)}`],i=mi().length?g("run",o):void 0,s=[i,g("studio",n)].flatMap(b1),a=s.length?[...s,kc]:[kc];He([["studio",c=>w1(P(ai(c,[n]),e,a))],...i!==void 0?[["run",c=>ai(c,[o])]]:[]]),q(s.length?`The price of ${X(t)} is its first pack now`:`${X(t)} added`),Et("studio",iw),G(De(L(nl(t),a.length-1)))}var w1=t=>$(t,"/currency")?t:P(t,"/currency",Oa());function b1(t){let e=$(t,"/paid");if(!e)return[];let n=$(t,"/confirmed");return[{holds:$(t,"/for")??"",paid:e,...n===void 0?{}:{confirmed:n}}]}var rw=t=>r`<button
    type="button"
    aria-label="Another pack size of ${X(t)}"
    @click=${()=>ol(t)}
  >
    Another pack size
  </button>`;function aw(t){let e=So(t),n=tt("studio",nl(e).at).length,o=()=>{Et("studio",iw),G(De(L(nl(e),0)))};return r`<div class="row">
    <p>${X(t)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${X(t)}" @click=${o}>To its packs</button>
  </div>`}function lw(){let t=e=>`/have/${B(e)}`;return r`${dt("studio","/have").map(e=>{let n=ow(e),o=n?void 0:"Such as 12 pieces, or 1 kg";return r`<div class="row">
      ${f({of:"studio",label:X(e),at:t(e),unit:n,hint:o,short:!0})}
      ${To("studio","/have",e,X(e))}
    </div>`})}
  ${Ro({key:"have",label:"Which material stands on the shelf?",offers:be(),taken:e=>nw("/have",e)!==void 0,take:e=>W("studio",`${X(e)} added`,t(e),"",Z("studio",t(e)))})}`}var uw=({key:t})=>`money ${t}`;function pw(){if(!Fe())return u;let t=v1(Oa());return!gn()&&t.some(e=>l.open.has(`folded studio ${uw(e)}`))&&ka(),r`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${y1()}
    <div class="folds">
      ${t.map(e=>D({of:"studio",name:uw(e),pointers:e.pointers,summary:r`<span>${e.title}${e.told?r`<small>${e.told}</small>`:u}</span>`,body:e.body}))}
    </div>
  </section>`}var y1=()=>g("run","/money/currency")===void 0?u:r`<div class="row">
        ${Ao({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,Ao=t=>f({...t,of:"studio"}),il=t=>dt("studio",t).map(X).join(", "),mw=t=>["/work",t].join("/");function v1(t){let e=(i,s,a={})=>Ao({label:s,at:i,told:t,short:!0,...a}),n=(i,s)=>e(i,s,{optional:!0,takes_part:!0}),o=(i,s="")=>{let a=A("studio",i);return a&&`${a}${s}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste","/serves_as"],told:il("/packs"),body:()=>sw(t)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:il("/sellers"),body:()=>x1(e)},{key:"have",title:"On the shelf",pointers:["/have"],told:il("/have"),body:lw},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:x(vi).map(i=>X(String($(i,"/material")))).join(", "),body:R1},{key:"work",title:"Work",pointers:["/work"],told:o(mw("paid_an_hour"),` ${t} an hour`),body:()=>A1(e)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${t} each batch`),body:()=>r`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:D1},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>r`<div class="row">
          ${Ao({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:il("/asking"),body:()=>P1(e)}]}var k1=t=>(e,n)=>Object.entries(e.packs??{}).reduce((o,[i,s])=>s.reduce((a,{from:d},c)=>d===t?P(a,`/packs/${B(i)}/${c}/from`,n):a,o),e);function x1(t){let e=(n,o)=>`/sellers/${B(n)}/${o}`;return r`${dt("studio","/sellers").map(n=>r`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${To("studio","/sellers",n)}
        </div>
        <div class="row">
          ${Cs({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:k1(n)})}
          ${t(e(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${t(e(n,"postage_free_from"),"Free from",{optional:!0})}
          ${Ao({label:"From ordering to having it",at:e(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${wi({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>Z("studio",e(n,"postage"))})}`}var vi={of:"studio",at:"/packaging"},T1=t=>!be().includes(t)&&!l.fats.some(e=>e.id===t);function R1(){let t=e=>x(vi).some(n=>$(n,"/material")===e);return r`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${x(vi).map((e,n)=>S1(String($(e,"/material")??""),n))}
    ${Ro({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(e=>dt("studio",e)).filter(T1),taken:t,take:e=>j(vi,{material:e,each_piece:""},e)})}`}function S1(t,e){let n=So(t)!==void 0||g("studio",`/prices/${B(t)}`)!==void 0;return r`<div class="row" id=${L(vi,e)}>
    ${Ao({label:`${X(t)}, each piece`,at:`/packaging/${e}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?u:r`<button type="button" aria-label="Say its price: ${t}" @click=${()=>ol(t)}>
            Say its price
          </button>`}
    ${N(vi,e,t)}
  </div>`}function A1(t){let e=g("studio","/work")!==void 0;return r`<div class="row">
      ${t(mw("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:e})} ${Xa()}
    </div>
    ${C("studio","/work")}`}var dw=(t,e)=>T({of:"studio",question:t,at:`/tax/${e}`,chosen:A("studio",`/tax/${e}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),D1=()=>r`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${ie({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>r`<div class="row">${Ao({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${dw("The prices you pay are","prices_paid")} ${dw("The prices you ask are","prices_asked")}`})}`,cw=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function P1(t){let e=n=>`/asking/${B(n)}`;return r`${dt("studio","/asking").map(n=>O1(n,e(n),t))}
  ${wi({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>Z("studio",e(n))})}
  ${M1(t)}`}function O1(t,e,n){let o=g("studio",e)??{},i=cw.map(([a])=>a).find(a=>o[a]!==void 0),s=a=>Ao({label:a,at:`${e}/${i}`,unit:"%",short:!0});return r`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${To("studio","/asking",t)}
    </div>
    <div class="row">${Cs({of:"studio",at:"/asking",name:t,label:"What you call it"})}</div>
    ${T({of:"studio",question:"Its price comes by",at:e,chosen:i,answers:cw,puts:a=>({[a]:""}),then:a=>`${e}/${a}`})}
    ${i?r`<div class="row">
            ${i==="price"?n(`${e}/price`,"Price of a piece"):s(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:u}
  </div>`}var Ns={of:"studio",at:"/price_endings"},M1=t=>r`<p class="question">A price ends in</p>
    ${x(Ns).map((e,n)=>r`<div class="row" id=${L(Ns,n)}>
          ${t(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${N(Ns,n,`ending ${n+1}`)}
        </div>`)}
    ${Y(Ns,"Add an ending",()=>j(Ns,"","An ending"))}`;var F1=t=>it()&&So(t)===void 0&&mi().length>0;function fw(){if(!Fe())return r`<button type="button" @click=${C1}>Add what you paid</button>`;let t=(e,n)=>{let o=`/${B(e)}/${n}`;return{run:Pa.run+o,studio:Pa.studio+o}};return r`<div class="row">
      ${Dt(on,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${be().map(e=>So(e)===void 0||g("run",t(e,"paid").run)!==void 0?r`<div class="row">
              ${Dt(t(e,"paid"),{label:`${X(e)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${Dt(t(e,"for"),{label:`for how much ${X(e)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${F1(e)&&tn(t(e,"paid"))?rw(e):u}
            </div>`:aw(e))}
    </div>
    ${be().length?u:r`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function C1(){let t=it()?"studio":"run",e=t==="studio"?on.studio:on.run;W(t,"Prices added",e,"",Z(t,e))}var ki=t=>({run:t,studio:t}),xc=t=>({run:`/pipe/${t}`,studio:`/${t}`}),L1=ki("/scales"),hw=ki("/spoilage"),W1=ki("/pots");function Tc(t){return Yt({name:"studio",title:"My studio",result:_t(B1()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>E1(t)})}function B1(){let t=l.beside.studio?.file;return t?r`What is the same in every run, kept in ${t}.`:r`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function E1(t){let e=I1(t),n=[...e.flatMap(o=>o.all),...Gt()?[la]:[]];return r`${it()?u:r`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Xu(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say. Packs and
              sellers, your work, tax, fees and ways of selling can then be kept there too.
            </p>`}
    <div class="studio-sections">
      ${e.map(({title:o,all:i,body:s})=>r`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${qn(o,i)}
            </div>
            ${s()}
          </section>`)}
    </div>
    ${it()?r`${pw()} ${P$()} ${Z$()}`:u}`}function I1(t){let e=se(),n=[{title:"Scales",all:[L1],body:j1},{title:"Losses",all:[yc("pour"),...e?[yc("pipe")]:[]],body:()=>q1(e,t)},{title:"Rejects",all:[hw],body:N1},{title:"Pot and lye jug",all:[W1],body:U1},{title:"Moulds owned",all:gw().map(({shared:o})=>o),body:J1},{title:"Prices paid",all:mi(),body:fw}];return e&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(xc),body:z1},{title:"Weigh-cups",all:[],body:ug}),it()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[$i],body:dc}),n}function j1(){let t=(e,n)=>r`${Dt(ki(`/scales/${e}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:e==="large"?"scale_step":void 0})}
    ${Dt(ki(`/scales/${e}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return r`<div class="row">${t("large","Large scale")} ${t("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function q1(t,e){return r`<div class="row">
      ${vc("pour",t?"Base":void 0)} ${t?vc("pipe","Topping"):u}
    </div>
    ${e?H1(e):u}`}function H1({pour:t,pipe:e,...n}){let o=ht({pour:t,pipe:e,...n}),i=(s,{in_pieces_g:a,lost_g:d})=>`${s}: ${O(E(l.units,a))} in the pieces, ${O(E(l.units,d))} lost.`;return r`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",t)} ${e?i("Topping",e):""}
  </p>`}var N1=()=>Dt(hw,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function U1(){let t=(e,n,o)=>Dt(ki(`/pots/${e}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return r`<div class="row">
    ${t("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${t("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function z1(){let t=(n,o,i,s=!1)=>Dt(xc(n),{label:o,unit:i,short:!0,optional:!0,is_due:s,takes_part:n!=="bag_holds"}),e=n=>tn(xc(n))!==void 0;return r`<div class="row">
    ${t("bowl/holds","Bowl holds","l",e("bowl/whisk_needs"))}
    ${t("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${t("bag_holds","One bag holds","ml")}
    ${t("lye_spoon/holds","Lye spoon holds","ml",e("lye_spoon/time_between"))}
    ${t("lye_spoon/time_between","From one spoonful to the next","s",e("lye_spoon/holds"))}
  </div>`}function gw(){return["/pour",...x(Rt).map((e,n)=>_i(n))].flatMap(e=>{let n=A("run",`${e}/mould`);return n?[{mould:n,shared:{run:Q_(e),studio:`/moulds_owned/${B(td(n))}`}}]:[]})}function J1(){return r`<div class="row">
    ${gw().map(({mould:t,shared:e})=>{let n=l.files?.moulds.find(s=>s.file===t)?.name??t,o=tn(e)===void 0?wc(t):void 0,i=()=>{Y$(t,`/moulds_owned/${B(td(t))}`)};return r`${Dt(e,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&it()?r`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function Rc(t){let e=t&&ii(t);return r`${K1(t)}
    <div class="set-up">${_w(e)} ${V1()} ${Tc(e)}</div>`}function _w(t){return r`${j$(t)} ${se()?H$(t):u}
  ${$$()?y$(t):u} ${w$()?k$(t):u}
  ${Gt()?S$(t):u} ${K$(t)} ${uc()?A$(t?.whole):u}`}function V1(){return r`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${se()?u:r`<button type="button" @click=${dg}>Add a topping</button>${cg()}`}
      ${s$()} ${mg()}
      ${uc()?u:r`<button type="button" @click=${u$}>Draft the label</button>`}
    </div>
  </section>`}function $w(t=u){return r`<div class="row">
    ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${oi("Mould","/pour/mould",l.files?.moulds)}
    ${oi("Base","/pour/formula",l.files?.formulas)}
    ${se()?oi("Topping","/pipe/formula",l.files?.formulas):u} ${t}
  </div>`}function K1(t){return r`<section class="order-of" aria-labelledby="run-title">
    ${typeof l.run.now.note=="string"?r`<p class="aside">${l.run.now.note}</p>`:u}
    ${$w(t?Q1(t):u)}
    <div class="batches">${t?c$(t):u} ${ac()}</div>
  </section>`}function Q1(t){let{sell:e,make:n,fillings:o,cavities:i,casts:s,batches:a}=t.pieces,d=It(t)?`${a} batches, ${K(o,"filling")}`:Kr(o,i);return M({key:"pieces.make",label:t.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} ${t.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),e===n?"":`for ${e}`],size:"weigh",of:"pieces.make"})}function G1(){let e=(l.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>l.formulas[n]).filter(Y1);return[fe({part:"Run"},()=>[$w(),ac()]),...e.map(n=>fe({part:String(l.formulas[n].now.name||"Formula")},()=>Qg(n))),_w(),Tc()]}var Y1=(t,e,n)=>n.findIndex(o=>l.formulas[o]===l.formulas[t])===e;dh(G1);var Z1={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function ww(t){let e=s=>s.severity==="danger",n=[...t.cautions.filter(e),...t.cautions.filter(s=>!e(s))],o=s=>r`<ul>
      ${s.map(a=>r`<li class=${a.severity}><strong>${Z1[a.severity]??a.severity}</strong> ${a.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return r`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?r`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function bw(t,e){let n=t?.batches.findIndex(({numbers:a})=>a.includes(e))??-1;if(!t||n<0)return;let o=t.batches[n],i=e===1,s=o.weigh_out.filter(({vessel:a})=>a!=="melt"||i);return{plan:t,batch:o,place:`batches.${n}`,vessels:s,mark:o.mark}}function xi(t){let e=qo(t);return e?.finished_at?"done":e||Ho(t)?"under way":"not begun"}var X1=()=>Math.max(l.plan?.pieces.batches??0,...l.bench.batches.map(({batch:t})=>t));function tA(t){let{chosen:e}=l.bench;if(e!==void 0&&e<=t)return e;let n=Array.from({length:t},(i,s)=>s+1),o=i=>n.find(s=>xi(s)===i);return o("under way")??o("not begun")??1}function Sc(){let t=X1(),e=tA(t),n=qo(e),o=bw(l.plan,e);return{number:e,of:t,kept:n,planned:o,weights:n?bw(n.plan,e):o}}var kn=({kept:t})=>!t&&l.is_old,Ti=({plan:t,batch:e})=>t.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===e.pieces));var eA=6,nA={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function vw({number:t,of:e}){if(e<2)return u;let n=Array.from({length:e},(i,s)=>s+1),o=i=>`Batch ${i}, ${xi(i)}`;return e>eA?r`<select
      aria-label="Which batch is weighed"
      @change=${i=>yw(Number(i.target.value))}
    >
      ${n.map(i=>r`<option value=${i} ?selected=${i===t}>${o(i)}</option>`)}
    </select>`:at("Which batch is weighed",String(t),n.map(i=>[String(i),r`<span class="status" aria-hidden="true">${nA[xi(i)]}</span> ${i}<small>
          ${xi(i)}</small
        >`]),i=>yw(Number(i)))}function yw(t){Fm(t),q(`Batch ${t}, ${xi(t)}`)}var sl="";function kw(t){let{kept:e,number:n}=t;if(!e)return u;if(e.finished_at)return oA(t,e.finished_at);let i=(t.weights?.vessels??[]).flatMap(a=>a.rows).filter(({key:a})=>!fo(n,a).is_done).length,s=()=>i?xw(e.id):void Ql(n);return r`<div class="batch-end">
    <p class="aside">Begun ${Rw(e.begun_at)}; its weights stay as they were then.</p>
    ${sl===e.id?Tw(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{Ql(n)}):r`<button type="button" class=${i?"":"strong"} ?disabled=${Ho(n)} @click=${s}>
            This batch is done
          </button>`}
  </div>`}function oA({kept:t,number:e},n){let{id:o}=t;return r`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Rw(n)}.</p>
    ${sl===o?Tw("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Ni(e)}):r`<button type="button" @click=${()=>xw(o)}>Start this batch anew</button>`}
  </div>`}function xw(t){sl=t,nt(),G(H("batch-stays"))}function Tw(t,e,n){let o=()=>{sl="",nt(),G(H("run-title"))};return r`<p><b>${t}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${e}</button>
    </div>`}var iA=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Rw=t=>iA.format(new Date(t));var sA={pour:"Base",pipe:"Topping"},Sw=t=>new Map(t.flatMap(e=>e.rows.map(n=>[n.key,{row:n,vessel:e}])));function Aw(t,e){let[n,o]=[Sw(t),Sw(e)],i=[...t,...e].some(({batter:p})=>p==="pipe"),s,a=({row:p,vessel:m})=>{let _=!i||m.batter===s;return s=m.batter,(_||!s?"":`${sA[s]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${a(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${a(p)}, now ${p.row.shown}`);return[...d,...c]}var Ac=3,Dc=new Map,Pc="";function rA(t){let{kept:e,weights:n,planned:o,of:i}=t;if(!e||e.finished_at||!n)return;let{complaint:s}=l;if(s&&!qc(s))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:Q(s)};if(!o){if(!l.plan)return;let p=i>1?`the run has no batch ${t.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let a=Aw(n.vessels,o.vessels),d=new Set(Ti(n).map(({text:p})=>p)),c=Ti(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return a.length||c.length?{told:a,dangers:c,mark:o.mark}:void 0}function Dw(t){let e=rA(t),{kept:n}=t;if(!e||!n)return u;if(Dc.get(n.id)===e.mark)return uA(n.id);let o=e.dangers.length>0||e.refusal!==void 0;return r`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${aA(e)}
    </p>
    ${lA(e)}
    ${e.dangers.map(i=>r`<p class="danger"><strong>${Re}</strong> As it is now: ${i}</p>`)}
    ${Pc===n.id?pA(t):dA(t,e)}
  </div>`}function aA({told:t,refusal:e}){if(e!==void 0)return r`<strong>No weights can be given as it is now:</strong> ${e}.`;let n=t.length-Ac;return r`${t.slice(0,Ac).join("; ")}${n>0?` and ${n} more.`:"."}`}var lA=({told:t})=>t.length>Ac?r`<details>
        <summary>All ${t.length} changes</summary>
        <p>${t.join("; ")}.</p>
      </details>`:u;function uA(t){return r`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Dc.delete(t),nt())}>What has changed</button>
  </div>`}function dA(t,{mark:e,refusal:n}){let{id:o}=t.kept;return r`<div class="row">
    <button type="button" class="strong" @click=${()=>{Dc.set(o,e),nt(),G(H("run-title"))}}>Keep weighing</button>
    ${n===void 0?r`<button type="button" @click=${()=>cA(t)}>Start this batch anew</button>`:u}
  </div>`}function cA(t){let{ticks:e,weigh_cup:n,id:o}=t.kept;if(!Object.keys(e).length&&n===void 0)return void Ni(t.number);Pc=o,nt(),G(H("keep-weighing"))}function pA(t){let e=Object.keys(t.kept.ticks).length,n=()=>{Pc="",nt(),G(H("run-title"))},o=()=>{n(),Ni(t.number)};return r`<p>
      <b>${e===1?"The 1 tick":`All ${e} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var Pw=({text:t})=>r`<p class="danger"><strong>${Re}</strong> ${t}</p>`;function Ow(t){let e=new Set(l.dangers.run.map(({text:o})=>o)),n=Ti(t).filter(({text:o})=>!e.has(o));return n.length?r`<div class="dangers" role="alert">${n.map(Pw)}</div>`:u}var mA=({vessel:t})=>["lye","lye_pot","share"].includes(t),fA=({batter:t},e)=>!t||!e.batter||t===e.batter;function Mw(t,e){if(!mA(e))return u;let n=Ti(t).filter(o=>fA(o,e));return n.length?r`<div class="dangers">${n.map(o=>r`${Pw(o)} ${hA(o)}`)}</div>`:u}function hA({batter:t,topic:e}){return!t||e==="heat"?r`<button type="button" class="to-cause" @click=${_A}>To the cautions</button>`:r`<button type="button" class="to-cause" @click=${()=>gA(t)}>
    To the superfat of the ${t==="pour"?"base":"topping"}
  </button>`}function gA(t){Kt(t),requestAnimationFrame(()=>G(Z(t,"/superfat")))}function _A(){h({view:"watch"}),G(H("watch-title"))}var Oc=(t,e)=>r`<p class="do ${kn(t)?"old":""}">${e}</p>`;function Fw(t,{batch:e,plan:n}){let{below_brim_mm:o,mass_each_g:i}=e.pour,s=o<.05?"Pour to the brim":`Pour to ${O(Tt(l.units,o))} below the brim`;return Oc(t,r`${s}, <b>${O(E(l.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function Cw(t,{batch:e}){let n=e.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Oc(t,r`Whip until the level weigh-cup holds <b>${O(E(l.units,n.net_g))}</b>.`):u}function Lw(t,{batch:e}){let{pipe:n}=e;return n?Oc(t,r`Pipe <b>${S(n.volume_each_ml,0)} ml</b> on each, ${O(E(l.units,n.mass_each_g))} at the
      planned whipped density.`):u}function Ww(t,{shown:e,beside:n}){if(t==="both")return[e,n];let o=t==="us"?"oz":"g";return[Je(n)===o?n:e,""]}function Bw(t,e,n){if(e.vessel==="share"&&!t.batch.lye_pot&&n.role==="lye_solution")return wA(t,e,n);let o=$A(t,e,n);return o===void 0?void 0:{place:o}}function $A({batch:t,plan:e,place:n,vessels:o},i,s){switch(i.vessel){case"fats":case"lye":case"batter":return Iw(i,s,t,n);case"layers":return yA(s,t.pour.layers??[],`${n}.pour.layers`);case"dust":return Mc(s.name,t.dust,`${n}.dust`);case"lye_pot":return s.role==="water"||s.role==="ice"?`${n}.lye_pot.water_g`:Mc(s.name,t.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let a=o.filter(d=>d.vessel==="melt");return a.length===e.decorations.length?`decorations.${a.indexOf(i)}.make_g`:void 0}case"share":return bA(i,s,t,n)}}function wA({vessels:t},e,n){let o=t.find(s=>s.vessel==="lye"&&s.key===e.key.replace(/\.share$/,".lye"));return o?{working:{of:e.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:s,shown:a})=>({name:s,value:a,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var Ew=({key:t})=>Number(/^pipe\.(\d+)\./.exec(t)?.[1]??1)-1;function bA(t,e,n,o){let i=(n.pipe?.whippings??[]).slice(0,Ew(t)),s=t.batter==="pipe"?i.reduce((a,{count:d})=>a+d,1):0;return e.role==="lye_solution"?`${o}.lye_pot.shares.${s}.lye_g`:e.role==="water"?`${o}.lye_pot.shares.${s}.top_up_g`:Iw(t,e,n,o,"lye")}function Mc(t,e,n){let o=e.findIndex(i=>i.name===t);return o<0?void 0:`${n}.${o}.g`}function Iw(t,e,n,o,i=t.vessel){let s=Ew(t),[a,d]=t.batter==="pipe"?[n.pipe?.whippings[s],`${o}.pipe.whippings.${s}`]:[n.pour,`${o}.pour`],c=(a?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===e.name||e.role==="ice"&&_==="water"));return c<0?void 0:`${d}.ingredients.${c}.g`}function yA(t,e,n){let o=(e??[]).findIndex(({name:i})=>i===(t.adding??t.name));return o<0||!t.adding?o<0?void 0:`${n}.${o}.g`:Mc(t.name,e[o].colours,`${n}.${o}.colours`)}function Fc(t,e,n){let o=n.words.filter(({is_order:s})=>s),i=n.rows.every(({key:s})=>fo(t.number,s).is_done);return r`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${jw(n)}>
    <div class="vessel-head">
      <h3 id=${jw(n)}>
        ${n.title}${n.times?r` <b>${n.times} times</b>`:u}${n.day_before?r` <b>the day before</b>`:u}${i?r` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:s})=>r`<p class="vessel-order">${s}</p>`)}
    </div>
    ${Mw(e,n)}
    ${Yr(n.rows,({key:s})=>s,s=>vA(t,e,n,s))}
  </section>`}var jw=({key:t})=>`vessel-${t.replaceAll(".","-")}`;function vA(t,e,n,o){let{is_done:i,is_waiting:s}=fo(t.number,o.key),[a,d]=Ww(l.units,o),c=kn(t),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return r`<div class="weigh ${o.role} ${i?"done":""} ${s?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${F(i)}
        ?disabled=${t.kept?.finished_at!==void 0}
        @change=${_=>kA(t,e,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?r` <small>${m}</small>`:u}${s?r` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?r`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${a}</b>${d?r` <i>${d}</i>`:u}</span>
    </label>
    ${xA(t,e,n,o)}
  </div>`}function kA(t,{mark:e},n,o){if(!kn(t))return Pm(t.number,e,n.key,o.checked);o.checked=!o.checked,q("Not ticked: what is struck through is not to be weighed.")}function xA(t,e,n,o){let{planned:i}=t,s=i?.mark===e.mark?i.vessels.find(({key:m})=>m===n.key):void 0,a=i&&s&&Bw(i,s,o);if(!a)return u;let d=`weigh.${t.number}.${o.key}`,c=l.open.has(d),p=`sum-${d.replaceAll(/[^\w]/g,"-")}`;return r`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>qt("open",d)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?r`<div class="sum" id=${p}>${"place"in a?xu(a.place):jr(a.working)}</div>`:u}`}function Cc(t,e){let n=t.flatMap(({title:o,words:i})=>i.filter(({is_order:s})=>!s).map(({text:s})=>({title:o,text:s})));return r`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${e} ${n.map(({title:o,text:i})=>r`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function qw(t,e){let{planned:n,whip_today:o}=l;return!e||!n?void 0:(o?.of===n&&o.batch===t&&o.reading===e||TA(t,e),o?.batch===t&&o.reading===e?o:void 0)}var Lc=!1;async function TA(t,e){let{planned:n}=l;if(Lc||!n)return;Lc=!0;let o={of:n,batch:t,reading:e},i={holds:$(n.run,"/pipe/whip/holds")??"",net:e};try{let s=await Js({...n,run:P(n.run,"/pipe/whip_now",i)});h({whip_today:{...o,...RA(s,t)}})}catch(s){if(!(s instanceof v))throw s;h({whip_today:{...o,complaint:Q(s.complaint)}})}finally{Lc=!1}}function RA(t,e){let n=t.batches.find(({numbers:o})=>o.includes(e));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var Bc,Wc,SA=t=>Bc??(Je(t)==="oz"||!t&&l.units==="us"?"oz":"g");function Hw(t,e){let n=e.batch.pipe?.whippings??[];if(!n.some(a=>a.readings.length))return u;let o=Vl(t.number),i=SA(o),s=t.kept?.finished_at!==void 0;return r`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${hn("weigh_cup")}</div>
    ${Ae("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${F(Wc??o)}
        ?disabled=${s}
        @input=${a=>Wc=a.target.value}
        @change=${a=>DA(t,e,a.target.value,i)}
      />
      ${at("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],AA)}
    </div>
    ${PA(t,e,n,o)} ${MA(e,n)}
  </div>`}function AA(t){Bc=t,nt()}function DA(t,{mark:e},n,o){Wc=void 0;let i=Ve(n)?`${n.trim()} ${o}`:n.trim();if(Bc=void 0,i===Vl(t.number))return nt();if(kn(t))return q("Not taken: the weights are not those of what is typed."),nt();Om(t.number,e,i)}function PA(t,e,n,o){if(!o)return u;let i=qw(t.number,o);return i?i.complaint!==void 0?r`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==e.mark?r`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:r`<div class="today" role="status">
    ${n.map((s,a)=>r`<p>${OA(s,i.pieces?.[a]??null)}</p>`)}
  </div>`:r`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function OA({pieces:t,count:e},n){if(n===null)return u;let o=e>1?"Each of these bowls pipes":"This bowl pipes",i=t-n;return r`${o} <b>${K(n,"piece")}</b> now.
    ${i>0?r`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${t} to make.`}`}function MA(t,e){let n=t.plan.cut?"casts":"pieces";return r`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${e.map(o=>r`<table class="readings">
          <caption>
            A bowl for ${o.pieces}
          </caption>
          <thead>
            <tr>
              <th scope="col">net</th>
              <th scope="col">overrun</th>
              <th scope="col">pipes, ${n}</th>
            </tr>
          </thead>
          <tbody>
            ${o.readings.map(i=>r`<tr class=${i.planned?"planned":""}>
                  <th scope="row">${O(E(l.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${S(i.overrun_percent,0)} %</td>
                  <td>${t.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var Us="pour",Nw=()=>Sc().kept!==void 0;function Uw(){hr();let t=Sc(),e=l.bench.version!==void 0||l.bench.failed!==void 0;return r`<section class="weighing" data-part=${Us} aria-labelledby="run-title">
    ${FA(t)} ${LA(t)}
    ${t.weights&&e?r`${Ow(t.weights)} ${Dw(t)} ${WA(t,t.weights)}`:u}
    ${kw(t)}
  </section>`}function FA(t){let{weights:e}=t;return r`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${e?.plan.run??String(l.run.now.name??"")}</h1>
    ${e?r`<p class="which">${CA(t,e)}</p>`:u}
    <div class="row">
      ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${vw(t)}
    </div>
  </div>`}function CA(t,{plan:e,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),s=i.filter(({key:d})=>fo(t.number,d).is_done).length,a=t.of>1?`Batch ${t.number} of ${t.of}: `:"";return r`<b>${a}${Ze(e,n)}</b>, ${s} of ${i.length} weighed`}function LA({number:t,weights:e}){let{failed:n,unsent:o,told:i,complaints:s,version:a}=l.bench,d=o!==void 0&&Ho(t);return r`<div class="bench-told" role="status">
    ${i?.batch===t?r`<p class="alarm">${i.words}</p>
            <button type="button" @click=${Cm}>I have looked</button>`:u}
    ${d?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?r`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${s.map(c=>r`<p class="alarm">${c}</p>`)}
    ${e||n!==void 0?u:r`<p class="hint">
            ${l.complaint?"No weights before this is corrected.":a===void 0?"Reading ...":""}
          </p>`}
  </div>`}function WA(t,e){let{vessels:n}=e,o=p=>n.filter(m=>m.batter===p),i=o(),s=i.filter(p=>p.day_before),a=i.filter(p=>!p.day_before),d=o("pipe").length>0,c=p=>p.map(m=>Fc(t,e,m));return r`${HA(d,i)}
    <div class="batters ${d?"two":""}">
      ${rl("ahead","To have ready",c(s))}
      ${rl("base",d?"Base":"Batter",BA(t,e,o("pour"),s))}
      ${d?rl("topping","Topping",[...c(o("pipe")),jA(t,e),Cc(o("pipe"),IA(t,e))]):u}
      ${rl("after","At the end",c(a))}
    </div>`}var rl=(t,e,n)=>n.some(o=>o!==u)?r`<div class="part-of ${t}">
        <h2 id="weigh-${t}">${e}</h2>
        ${n}
      </div>`:u;function BA(t,e,n,o){let i=({vessel:a})=>a==="layers",s=a=>a.map(d=>Fc(t,e,d));return[...s(n.filter(a=>!i(a))),Fw(t,e),...s(n.filter(i)),Cc([...o,...n],EA(t,e))]}var zw=(t,e,n=u)=>r`<p class=${kn(t)?"old":""}>
    <b>Superfat as weighed:</b> ${e.map(o=>me(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,EA=(t,{batch:e})=>zw(t,[e.pour],In("superfat_as_weighed")),IA=(t,{batch:e})=>zw(t,e.pipe?.whippings??[]),jA=(t,e)=>r`${Cw(t,e)} ${Hw(t,e)} ${Lw(t,e)}`,qA={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function HA(t,e){let n=[...new Set(e.flatMap(({vessel:i})=>qA[i]??[]))].join(", ").toLowerCase(),o=[["pour",t?"Base":"Batter"],...t?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===Us)||(Us="pour"),r`<div class="narrow">${at("What is shown",Us,o,NA)}</div>`)}function NA(t){Us=t,nt(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var Jw=()=>r`${ci(Nw()?"No new weights can be given.":void 0)} ${Uw()}`;var UA={"set-up":Rc,watch:ww,money:q_,days:E_,mould:z_,print:K_};function Vw(t){let e=r`${dr().map(o=>Ge(o))} ${ur().map(Ye)}`;if(t==="weigh")return r`${e} ${Jw()}`;let{plan:n}=l;return r`${e} ${ci()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(l.run.now.name??"")}</h1>
    ${n?UA[t](n):zA(t)}`}function zA(t){return l.complaint?t==="set-up"?Rc():r`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:r`<p class="hint">Reading the run ...</p>`}var JA=()=>{h({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function Qw(){let t=l.new_run;if(!t)return r`<p class="choice"><button type="button" class="strong" @click=${JA}>New run</button></p>`;let{name:e,mould:n,formula:o}=t,i=ua(t.sell),s=e.trim()&&n&&o&&i,a=()=>{lt(async()=>{await Dr({name:e.trim(),mould:n,formula:o,sell:i}),h({new_run:void 0})})};return r`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${F(e)}
          @input=${d=>y(t,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${Kw(t,"mould","Mould",VA())} ${Kw(t,"formula","Base",KA())}
      ${da("new-run-sell",t.sell,d=>y(t,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${a}>Make the run</button>
      <button type="button" @click=${()=>h({new_run:void 0})}>Cancel</button>
    </div>
    ${s?u:r`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var VA=()=>[...(l.files?.moulds??[]).filter(t=>!t.shipped).map(t=>[t.file,t.name||t.file]),...l.catalogue.map(t=>[t.path,t.name])],KA=()=>(l.files?.formulas??[]).map(t=>[t.file,t.name||t.file]);function Kw(t,e,n,o){let i=`new-run-${e}`;return r`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${a=>y(t,{[e]:a.target.value})}>
      <option value="" .selected=${F(t[e]==="")}>choose ...</option>
      ${o.map(([a,d])=>r`<option value=${a} .selected=${F(a===t[e])}>${d}</option>`)}
    </select>
  </div>`}var QA=(t,e)=>(e.changed??"").localeCompare(t.changed??"");function Yw(){let t=l.files?.runs??[],e=t.filter(o=>!o.shipped).sort(QA),n=t.filter(o=>o.shipped);return r`${_e("Runs")} ${Qw()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${e.length?Me(e,Gw):r`<p class="aside">No runs of your own in ${l.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Me(n,Gw)}
    </section>
    ${$e("run")}`}function Gw(t){let{pieces:e,mould:n,due:o,made_on:i,changed:s}=t,a=[e===void 0?"":K(e,"piece"),n??"",o?`due ${bt(o)}`:"",i?`made ${bt(i)}`:s?`changed ${bt(s)}`:""].filter(Boolean);return Xe({kind:io,one:t,facts:a,picture:GA(n),open:()=>Ne(t.file)})}var GA=t=>l.files?.moulds.find(e=>e.name===t)?.file??l.catalogue.find(e=>e.name===t)?.path;function Zw(){let t=Fn();return r`${_e("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${Zr(Sn,"Each file is named by the studio, or by the runs that use its tips.",e=>Ji(Sn,e))}
      ${t?Sh(t):u}
      ${Xr({label:"A new tip of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(Ph(e)):kr(Sn,Lu(e)),tried:lt})}
    </section>
    <section aria-labelledby="built-in-tips">
      <h2 id="built-in-tips">Built-in tips</h2>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Tip</th>
            <th scope="col">Opening</th>
            <th scope="col">Area, mm²</th>
          </tr>
        </thead>
        <tbody>
          ${Xi().map(({name:e,opening:n,area_mm2:o})=>r`<tr>
                <th scope="row">${e}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":S(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${$e("tips")}`}var eb=document.getElementById("page");function nb(){let{view:t,fault:e}=l;return r` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${W_()} ${zf()}
    <main
      id="main"
      tabindex="-1"
      data-view=${t}
      class=${l.is_old&&!ue(t)&&t!=="order"?"old-now":""}
    >
      ${e?r`${t==="reading"?r`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${e}</p>`:u}
      ${ZA()}
    </main>
    <p class="unseen" role="status">${l.announcement}</p>`}var YA={runs:Yw,orders:D_,formulas:Yg,moulds:Zg,fats:Ih,tips:Zw};function ZA(){let{view:t,fault:e}=l;return sn(t)?Vw(t):ue(t)?YA[t]():t==="formula"?Kg():t==="order"?A_():e?u:r`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}Fp(()=>{Bg(),de(nb(),eb),eD()});de(nb(),eb);document.addEventListener("keydown",t=>{if(!(t.ctrlKey||t.metaKey)||t.key.toLowerCase()!=="z"||ue(l.view)&&!l.mould)return;t.preventDefault();let{undo:e,redo:n}=Ua();(t.shiftKey?n:e)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return bf();dn()});function XA(){if(!l.run.file)return Ec();h({fault:void 0}),dn(),ut()}function Ec(){h({fault:void 0}),zg().catch(t=>{h({fault:tD(t)}),t instanceof v&&t.may_pass&&window.setTimeout(Ec,2e3)})}function tD(t){return t instanceof v&&[401,403].includes(t.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":t instanceof Error?t.message:String(t)}var Xw=new ResizeObserver(([{target:t}])=>ob(t.offsetHeight)),tb=null;function eD(){let t=document.querySelector(".foremost");t!==tb&&(Xw.disconnect(),t?Xw.observe(t):ob(0),tb=t)}var ob=t=>document.documentElement.style.setProperty("--foremost",`${t}px`);Hf();Ug();jc(t=>{di(),t&&XA()});Ec();
