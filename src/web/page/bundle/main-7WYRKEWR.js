import{A as km,B as xm,C as Vt,D as Tm,E as Rm,F as Sm,G as re,H as we,I as Dm,J as Am,K as it,L as mn,M as Ji,N as Qt,O as Yl,P as Pm,Q as Om,S as Mm,T as Bm,U as Fm,a as am,b as lm,c as H,d as y,e as um,f as _s,g as On,h as $s,i as Fe,j as Yo,k as dm,l as cm,m as pm,n as mm,o as fm,p as zi,q as hm,r as gm,s as bs,t as _m,u as $m,v as bm,w as wm,x as ym,y as Mn,z as vm}from"./chunk-TQ53HCQU.js";var ws=globalThis,vs=ws.ShadowRoot&&(ws.ShadyCSS===void 0||ws.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,Lm=Symbol(),Cm=new WeakMap,ys=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==Lm)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(vs&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=Cm.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&Cm.set(n,t))}return t}toString(){return this.cssText}},Im=e=>new ys(typeof e=="string"?e:e+"",void 0,Lm);var Wm=(e,t)=>{if(vs)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=ws.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},Zl=vs?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return Im(n)})(e):e;var{is:cv,defineProperty:pv,getOwnPropertyDescriptor:mv,getOwnPropertyNames:fv,getOwnPropertySymbols:hv,getPrototypeOf:gv}=Object,ks=globalThis,Em=ks.trustedTypes,_v=Em?Em.emptyScript:"",$v=ks.reactiveElementPolyfillSupport,Ki=(e,t)=>e,Xl={toAttribute(e,t){switch(t){case Boolean:e=e?_v:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},jm=(e,t)=>!cv(e,t),Nm={attribute:!0,type:String,converter:Xl,reflect:!1,useDefault:!1,hasChanged:jm};Symbol.metadata??=Symbol("metadata"),ks.litPropertyMetadata??=new WeakMap;var fn=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=Nm){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&pv(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:r}=mv(this.prototype,t)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let d=i?.call(this);r?.call(this,l),this.requestUpdate(t,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??Nm}static _$Ei(){if(this.hasOwnProperty(Ki("elementProperties")))return;let t=gv(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(Ki("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(Ki("properties"))){let n=this.properties,o=[...fv(n),...hv(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(Zl(i))}else t!==void 0&&n.push(Zl(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return Wm(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:Xl).toAttribute(n,o.type);this._$Em=t,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),l=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:Xl;this._$Em=i;let d=l.fromAttribute(n,r.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(t,n,o,i=!1,r){if(t!==void 0){let l=this.constructor;if(i===!1&&(r=this[t]),o??=l.getPropertyOptions(t),!((o.hasChanged??jm)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(t)&&!this.hasAttribute(l._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:r},l){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,l??n??this[t]),r!==!0||l!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:l}=r,d=this[i];l!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,r,d)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};fn.elementStyles=[],fn.shadowRootOptions={mode:"open"},fn[Ki("elementProperties")]=new Map,fn[Ki("finalized")]=new Map,$v?.({ReactiveElement:fn}),(ks.reactiveElementVersions??=[]).push("2.1.2");var tu=globalThis,Hm=e=>e,xs=tu.trustedTypes,qm=xs?xs.createPolicy("lit-html",{createHTML:e=>e}):void 0,nu="$lit$",hn=`lit$${Math.random().toFixed(9).slice(2)}$`,ou="?"+hn,bv=`<${ou}>`,bo=document,Qi=()=>bo.createComment(""),Gi=e=>e===null||typeof e!="object"&&typeof e!="function",iu=Array.isArray,Qm=e=>iu(e)||typeof e?.[Symbol.iterator]=="function",eu=`[ 	
\f\r]`,Vi=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Um=/-->/g,zm=/>/g,_o=RegExp(`>|${eu}(?:([^\\s"'>=/]+)(${eu}*=${eu}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Jm=/'/g,Km=/"/g,Gm=/^(?:script|style|textarea|title)$/i,ru=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),s=ru(1),S=ru(2),xM=ru(3),Ce=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Vm=new WeakMap,$o=bo.createTreeWalker(bo,129);function Ym(e,t){if(!iu(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return qm!==void 0?qm.createHTML(t):t}var Zm=(e,t)=>{let n=e.length-1,o=[],i,r=t===2?"<svg>":t===3?"<math>":"",l=Vi;for(let d=0;d<n;d++){let c=e[d],p,m,_=-1,b=0;for(;b<c.length&&(l.lastIndex=b,m=l.exec(c),m!==null);)b=l.lastIndex,l===Vi?m[1]==="!--"?l=Um:m[1]!==void 0?l=zm:m[2]!==void 0?(Gm.test(m[2])&&(i=RegExp("</"+m[2],"g")),l=_o):m[3]!==void 0&&(l=_o):l===_o?m[0]===">"?(l=i??Vi,_=-1):m[1]===void 0?_=-2:(_=l.lastIndex-m[2].length,p=m[1],l=m[3]===void 0?_o:m[3]==='"'?Km:Jm):l===Km||l===Jm?l=_o:l===Um||l===zm?l=Vi:(l=_o,i=void 0);let w=l===_o&&e[d+1].startsWith("/>")?" ":"";r+=l===Vi?c+bv:_>=0?(o.push(p),c.slice(0,_)+nu+c.slice(_)+hn+w):c+hn+(_===-2?d:w)}return[Ym(e,r+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},Yi=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let r=0,l=0,d=t.length-1,c=this.parts,[p,m]=Zm(t,n);if(this.el=e.createElement(p,o),$o.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=$o.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(nu)){let b=m[l++],w=i.getAttribute(_).split(hn),x=/([.?@])?(.*)/.exec(b);c.push({type:1,index:r,name:x[2],strings:w,ctor:x[1]==="."?Rs:x[1]==="?"?Ss:x[1]==="@"?Ds:yo}),i.removeAttribute(_)}else _.startsWith(hn)&&(c.push({type:6,index:r}),i.removeAttribute(_));if(Gm.test(i.tagName)){let _=i.textContent.split(hn),b=_.length-1;if(b>0){i.textContent=xs?xs.emptyScript:"";for(let w=0;w<b;w++)i.append(_[w],Qi()),$o.nextNode(),c.push({type:2,index:++r});i.append(_[b],Qi())}}}else if(i.nodeType===8)if(i.data===ou)c.push({type:2,index:r});else{let _=-1;for(;(_=i.data.indexOf(hn,_+1))!==-1;)c.push({type:7,index:r}),_+=hn.length-1}r++}}static createElement(t,n){let o=bo.createElement("template");return o.innerHTML=t,o}};function wo(e,t,n=e,o){if(t===Ce)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=Gi(t)?void 0:t._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=wo(e,i._$AS(e,t.values),i,o)),t}var Ts=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??bo).importNode(n,!0);$o.currentNode=i;let r=$o.nextNode(),l=0,d=0,c=o[0];for(;c!==void 0;){if(l===c.index){let p;c.type===2?p=new Zo(r,r.nextSibling,this,t):c.type===1?p=new c.ctor(r,c.name,c.strings,this,t):c.type===6&&(p=new As(r,this,t)),this._$AV.push(p),c=o[++d]}l!==c?.index&&(r=$o.nextNode(),l++)}return $o.currentNode=bo,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},Zo=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=wo(this,t,n),Gi(t)?t===u||t==null||t===""?(this._$AH!==u&&this._$AR(),this._$AH=u):t!==this._$AH&&t!==Ce&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):Qm(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==u&&Gi(this._$AH)?this._$AA.nextSibling.data=t:this.T(bo.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=Yi.createElement(Ym(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new Ts(i,this),l=r.u(this.options);r.p(n),this.T(l),this._$AH=r}}_$AC(t){let n=Vm.get(t.strings);return n===void 0&&Vm.set(t.strings,n=new Yi(t)),n}k(t){iu(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of t)i===n.length?n.push(o=new e(this.O(Qi()),this.O(Qi()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=Hm(t).nextSibling;Hm(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},yo=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,r){this.type=1,this._$AH=u,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(t,n=this,o,i){let r=this.strings,l=!1;if(r===void 0)t=wo(this,t,n,0),l=!Gi(t)||t!==this._$AH&&t!==Ce,l&&(this._$AH=t);else{let d=t,c,p;for(t=r[0],c=0;c<r.length-1;c++)p=wo(this,d[o+c],n,c),p===Ce&&(p=this._$AH[c]),l||=!Gi(p)||p!==this._$AH[c],p===u?t=u:t!==u&&(t+=(p??"")+r[c+1]),this._$AH[c]=p}l&&!i&&this.j(t)}j(t){t===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},Rs=class extends yo{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===u?void 0:t}},Ss=class extends yo{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==u)}},Ds=class extends yo{constructor(t,n,o,i,r){super(t,n,o,i,r),this.type=5}_$AI(t,n=this){if((t=wo(this,t,n,0)??u)===Ce)return;let o=this._$AH,i=t===u&&o!==u||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,r=t!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},As=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){wo(this,t)}},Xm={M:nu,P:hn,A:ou,C:1,L:Zm,R:Ts,D:Qm,V:wo,I:Zo,H:yo,N:Ss,U:Ds,B:Rs,F:As},wv=tu.litHtmlPolyfillSupport;wv?.(Yi,Zo),(tu.litHtmlVersions??=[]).push("3.3.3");var _t=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new Zo(t.insertBefore(Qi(),r),r,void 0,n??{})}return i._$AI(e),i};var su=globalThis,Xo=class extends fn{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=_t(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Ce}};Xo._$litElement$=!0,Xo.finalized=!0,su.litElementHydrateSupport?.({LitElement:Xo});var yv=su.litElementPolyfillSupport;yv?.({LitElement:Xo});(su.litElementVersions??=[]).push("4.2.2");var tf=()=>{},au=!1,Ps=!1,uu=!1;function nf(e){tf=e}function Q(){au||(au=!0,queueMicrotask(()=>{au=!1,Ps?uu=!0:of()}))}function of(){uu=!1,tf()}var vv=1500,lu=0;function ef(){clearTimeout(lu),Ps=!1,uu&&of()}function rf(){let e=({target:t})=>{!(t instanceof Element)||t.closest("[role=slider], select, canvas")||(Ps=!0,clearTimeout(lu),lu=window.setTimeout(ef,vv))};addEventListener("pointerdown",e,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>setTimeout(ef),!0);addEventListener("click",()=>Ps=!1,!0)}function sf(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}var W=e=>e.replaceAll("~","~0").replaceAll("/","~1");function $(e,t){let n=e;for(let o of sf(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function P(e,t,n){return du(e,sf(t),n)}function du(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let d=[...e],c=du(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let r={...e??{}},l=du(r[o],i,n);return l===void 0?delete r[o]:r[o]=l,r}var af=e=>_s("GET",`/api/bench?run=${encodeURIComponent(e)}`),lf=e=>On("/api/bench/tick",e),uf=e=>On("/api/bench/weigh_cup",e),df=(e,t)=>On("/api/bench/anew",{run:e,batch:t}),cf=(e,t)=>On("/api/bench/finish",{run:e,batch:t});var ae=(e,t)=>({name:e,label:t,unit:"mm"}),Bn=ae("height","Floor to brim"),Os={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},cu={block:{words:"Box, loaf or slab",measures:[ae("length","Longer side at the brim"),ae("width","Shorter side"),Bn,Os,{...ae("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[ae("floor_diameter","Across the floor"),ae("brim_diameter","Across the brim"),Bn]},fluted_cup:{words:"Fluted cup",measures:[ae("floor_diameter","Across the floor"),ae("brim_diameter","Across the brim"),Bn,{name:"flutes",label:"Flutes",unit:"",count:!0},ae("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},ae("across_flats","Across the flats"),Bn,Os]},dome:{words:"Bowl",measures:[ae("diameter","Across the brim"),Bn]},half_ball:{words:"Half ball",measures:[ae("diameter","Across the brim")]},ball:{words:"Ball",measures:[ae("diameter","Across")]},half_ring:{words:"Half ring",measures:[ae("centre_diameter","Ring, middle to middle of the tube"),ae("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[ae("outer_floor_diameter","Cup, across the floor"),ae("outer_brim_diameter","Cup, across the brim"),ae("post_floor_diameter","Post, at its foot"),ae("post_brim_diameter","Post, at its top"),Bn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[ae("height","Height"),ae("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Bn,Os],points:{columns:[ae("x","From the left"),ae("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[ae("side","Straight edge, tip to round"),Bn,Os]}},pf=Object.fromEntries(Object.entries(cu).map(([e,{words:t}])=>[e,t])),ei=e=>cu[e]?.measures??[],Fn=e=>cu[e]?.points;var pu=(e,t)=>String($(e,t)??"").trim(),Zi=e=>pu(e,"/shape/kind"),Pt=(e,t)=>$(e,`/${t}`)!==void 0,mu=e=>["body","skin"].includes(pu(e,"/mesh/role"));function rt(e,t){let n=$(e,t);return Array.isArray(n)?n:[]}function mf(e,t){return(Fn(Zi(e))?.columns??[]).map(({name:o})=>String($(t,`/${o}`)??"").trim())}function Xi(e){return rt(e,"/shape/points").flatMap((t,n)=>mf(e,t).every(Boolean)?[n]:[])}function Ms(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return rt(e,"/shape/points").flatMap((n,o)=>t(mf(e,n))?[o]:[])}var fu=e=>rt(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function ff(e){let t=e,n=(o,i)=>{if(!Array.isArray($(t,o)))return;let r=i.map(l=>$(e,`${o}/${l}`));t=P(t,o,r)};return Fn(Zi(e))&&n("/shape/points",Xi(e)),n("/water/weighings",fu(e)),t}function Bs(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let r=n==="/shape/points"?Xi(e):fu(e);return`${n}/${r[Number(o)]??o}${i}`}function er(e){let t=[],n=i=>pu(e,i)!=="",o=(i,r)=>{i||t.push(r)};if(Pt(e,"shape")){let i=Zi(e);o(i!=="","the shape");for(let{name:l,label:d,optional:c}of ei(i))o(c||n(`/shape/${l}`),d.toLowerCase());let r=Fn(i);r&&o(Xi(e).length>=r.least,`${r.least} points at least`)}if(Pt(e,"water")){o(n("/water/temperature"),"the water's temperature"),o($(e,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(e,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(fu(e).length>0,"a weighing of water")}return!mu(e)&&!Pt(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var Ge=e=>e.slice(0,e.lastIndexOf("/")+1),st=e=>e.slice(e.lastIndexOf("/")+1),gn=(e,t)=>{let n=Ge(e);return n?kv(n+t):t};function kv(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function Ot(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function ti(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let r=i===1?e:`${n}_${i}${o}`;if(!t.some(l=>l.file===r))return r}}var xv=["mould","formula","run","file","own_fats","own_tips"];function hu(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?hu(o,i):xv.includes(n)?[i]:[]})}function gu(e,t){let[n,o]=[e,t];for(let i of["/$schema","/id",...hu(e)])[n,o]=[P(n,i,void 0),P(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function _u(e,t){let n=["/id",...hu(e)].filter(o=>$(e,o)!==$(t,o));return o=>n.reduce((i,r)=>$(i,r)===$(e,r)?P(i,r,$(t,r)):i,o)}var vo={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:e,file:t,now:n})=>e?st(t):Ot(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},ko={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:e})=>Ot(String(e.for??"order"),".order.json"),written:e=>e,is_begun:()=>!0},xo={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:e,file:t,now:n})=>e?st(t):Ot(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},$u=(e,t,n)=>({name:e,list:t,called:n,has_id:!1,new_name:({file:o})=>st(o),written:o=>o,is_begun:()=>!0}),tr=$u("studio","studios","name"),Gt=$u("fats","fats"),Cn=$u("tips","tips","title"),Ye={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:e})=>Ot(String(e.name),".json"),written:e=>({...ff(e),name:String(e.name??"").trim()}),is_begun:e=>Pt(e,"shape")||Pt(e,"mesh")};var hf={},gf={kind:vo,id:"",file:"",version:null,shipped:!1,now:hf,saved:hf,unanswered:[]},Le={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:gf,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,changed_beside:[],dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},record:{run:"",batches:[],acts:[]},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(Sv()),folded:new Set,units:Tv(),announcement:""},a=Le;function Tv(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}var bu=e=>`numbers ${String(e.now.id??e.file)}`,Rv=e=>({numbers:localStorage.getItem(bu(e))??void 0,figure:""});function nr(e){f({quote_wish:{...Le.quote_wish,...e}});let{numbers:t}=Le.quote_wish;t?.trim()?localStorage.setItem(bu(Le.run),t):localStorage.removeItem(bu(Le.run))}var _f="set-up ";function Sv(){try{let e=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(e)?e.filter(t=>typeof t=="string"):[]}catch{return[]}}function Dv(){let e=[...Le.open].filter(t=>t.startsWith(_f));localStorage.setItem("parts",JSON.stringify(e))}function f(e){Object.assign(Le,e),Q()}var B=e=>f({announcement:e});function v(e,t){Object.assign(e,t),Q()}function _n(e,t){let{[e]:n,...o}=Le.formulas;f({formulas:t?{...o,[e]:t}:o})}function Ue(e,t){let n=new Set(Le[e]);n.delete(t)||n.add(t),f({[e]:n}),t.startsWith(_f)&&Dv()}function ni(e=gf){f({run:e,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:[],taken_in:void 0,fault:void 0,plan:void 0,quote_wish:Rv(e),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function le(e){Le.open.has(e)||f({open:new Set(Le.open).add(e)})}function To({list:e,called:t},n,o={}){if(!Le.files)return;let i=Le.files[e].findIndex(d=>d.file===n),r={...i<0?{}:Le.files[e][i],file:n,name:String((t&&o[t])??""),note:String(o.note??""),shipped:!1},l=Le.files[e].filter(d=>d.file!==n);l.splice(i<0?l.length:i,0,r),f({files:{...Le.files,[e]:l}})}var Av=1e4,wu=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",wu);var Fs=[],oi=()=>`bench ${a.files?.folder??""}`;function at(){try{return[...JSON.parse(localStorage.getItem(oi())??"[]"),...Fs]}catch{return Fs}}function yu(e){try{e.length?localStorage.setItem(oi(),JSON.stringify(e)):localStorage.removeItem(oi()),Fs=[]}catch{Fs=e}}var Pv=(e,t)=>e.run===t.run&&e.batch===t.batch&&e.key===t.key;function $f(e){let t={...e,id:crypto.randomUUID(),tab:wu,at:Date.now()};yu([...at().filter(n=>!Pv(n,t)),t])}var Cs=e=>yu(at().filter(t=>!e(t))),bf=(e,t)=>yu(at().map(n=>n.run===e?{...n,run:t}:n)),vu=()=>at().find(e=>e.tab===wu||Date.now()-e.at>Av);var me=["pour","pipe","apart"],ye=["studio","own_fats","own_tips"],Ls=e=>ye.includes(e);var ku=e=>[...new Set(e.flatMap(t=>a.formulas[t]??[]))],xu=()=>ye.flatMap(e=>a.beside[e]??[]),wf=e=>e.filter(t=>t.theirs),$n=e=>wf([...ku(e==="apart"?["apart"]:["pour","pipe"]),...xu()])[0],Is=()=>[a.run,...ku(me),...xu()].filter(e=>e.is_taken&&!e.theirs),Ws=()=>wf([a.run,...ku(me),...xu()]);var or=()=>a.formulas.apart?"apart":"run",yf=e=>f({dangers:{...a.dangers,[or()]:e}});function Tu(e){let t=e.cautions.filter(n=>n.severity==="danger");yf(t.map(({text:n,topic:o,batter:i,batch_pieces:r})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:r})))}function vf(e){e.lye_heavy&&yf([{text:H(e),is_of_heat:!1}])}var kf={};function Mt(e,t){(kf[e]??=[]).push(t)}function xe(e,t){for(let n of kf[e]??[])n(t)}var ir=new Map,Bt=e=>{ir.set(e,void 0)},Ln=(e,t)=>{ir.set(e,t)};function xf(e,t){if(!ir.has(e))return!1;let n=ir.get(e);return n===void 0&&ir.set(e,t),n===void 0||n===t}async function $t({kind:e,name:t,text:n,from:o,goes_on:i,about_to:r,is_own:l}){for(;;){let{runs:d=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:b=[],tips:w=[]}=a.files??{},x=ti(t,[...d,...c,...p,...m,..._,...b,...w]);r?.(x);let K=await Ov({file:x,version:null,text:n,from:o,goes_on:i});if(To(e,x,we(K.there.text)??{}),K.is_new||l?.(K.there))return K.there}}async function Ov(e){try{Bt(e.file);let t=await Yo(e);return Ln(t.file,t.version),{is_new:!0,there:t}}catch(t){if(!(t instanceof y)||t.status!==409)throw t;return Ln(e.file,null),{is_new:!1,there:t.answer}}}var Es=e=>`unsaved ${e.name} ${a.files?.folder??""} `;function Ro({kind:e,id:t,file:n,version:o,shipped:i,now:r},l){if(e.is_begun(r))try{let d={id:t,file:n,version:o,shipped:i,text:re(r),copy:l};localStorage.setItem(Es(e)+t,JSON.stringify(d))}catch{}}function Ru(e,t){try{return JSON.parse(localStorage.getItem(Es(e)+t)??"null")??void 0}catch{return}}var In=(e,t)=>localStorage.removeItem(Es(e)+t),Tf=()=>Object.keys(localStorage).some(e=>e.startsWith("unsaved "));function Ns(e){let t=Es(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>Ru(e,o)??[])}var Mv=300,Y=e=>e.now!==e.saved;function So(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function Se(e,t,n=t){let o=await Bm(t),i=Bv(e,JSON.parse(o.text),o.shipped),r=Ru(e,n),l=r?.copy&&o.shipped?await Fv(e,r,i):void 0;if(l)return In(e,n),Se(e,l);let{version:d,shipped:c=!1}=o,p={kind:e,id:n,file:t,version:d,shipped:c,now:i,saved:i,unanswered:[]};return r&&Cv(p,r,o),p}var Bv=(e,t,n=!1)=>e.has_id&&!n&&t.id===void 0?{...t,id:crypto.randomUUID()}:t;async function Fv(e,t,n){if(!a.files?.[e.list].some(r=>r.file===t.copy))return;let o=we(t.text),i=we((await Fe(t.copy)).text);if(!(!o||!i||re(o)===re(n)))return gu(e.written(o),i)?t.copy:void 0}function Cv(e,t,n){let o=we(t.text);if(!o||re(o)===re(e.now))return In(e.kind,e.id);v(e,{now:o}),!(t.version===n.version||n.shipped)&&(v(e,{version:t.version}),Bf(e,n))}function De(e,t){let n=e.now;v(e,{now:t,failed:void 0,...e.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),Ro(e),xe("edited",{file:e,before:n})}var Rf=new WeakMap,Su=async e=>Rf.get(e),Yt=e=>Sf(e,()=>Lv(e)),Wn=e=>Sf(e,()=>e.shipped?Df(e,Af):Promise.resolve());function Sf(e,t){let n=Su(e).then(t);return Rf.set(e,n.catch(()=>{})),n}async function Lv(e){!Y(e)||e.theirs||await Df(e,e.shipped||!e.file?Af:Pf)}async function Df(e,t){v(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof y&&v(e,{failed:H(n.complaint)}),n}}async function Af(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,r=t.written(o),l=await $t({kind:t,name:t.new_name(e),text:re(r),from:i,goes_on:i!==void 0&&t.name==="run",about_to:m=>Ro(e,m),is_own:({text:m})=>i!==void 0&&gu(r,we(m)??{})}),d=JSON.parse(l.text),c=_u(r,d),p=e.now===o?d:c(e.now);In(t,n),v(e,{id:l.file,file:l.file,version:l.version,shipped:!1,now:p,saved:d}),Y(e)&&Ro(e),i!==void 0&&xe("copied",{file:e,from:i,renamed:c})}async function Pf(e){let{version:t,now:n}=e,o=re(e.kind.written(n));v(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{Bt(e.file);let i=await Yo({file:e.file,version:t,text:o});Ln(e.file,i.version),js(e,n,i.version)}catch(i){if(!(i instanceof y)||i.status!==409)throw i;Ln(e.file,t),Of(e,i.answer),Y(e)&&!e.theirs&&await Pf(e)}}function js(e,t,n){v(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),Y(e)?Ro(e):In(e.kind,e.id),To(e.kind,e.file,t)}function Of(e,{version:t,text:n}){if(n===re(e.kind.written(e.now)))return js(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);if(v(e,{unanswered:[]}),o)return v(e,{version:t,saved:void 0,theirs:void 0});let i=Y(e)||e.theirs?void 0:we(n);i?Iv(e,i,t):Bf(e,{version:t,text:n})}function Iv(e,t,n){xe("giving_way",{file:e}),v(e,{set_aside:e.now,is_taken:!0,now:t}),js(e,t,n),B(`${e.file} was changed outside this page, and stands here as it is now.`),xe("gave_way",{file:e})}var Mf=e=>v(e,{set_aside:void 0,is_taken:void 0});function Bf(e,{version:t,text:n}){v(e,{theirs:{version:t,text:n}}),Ro(e),B(n===null?`${e.file} was deleted outside this page. Save it again, or leave it deleted?`:`${e.file} was changed outside this page. Which version do you want to keep?`),xe("conflict",{file:e})}function Ff(e){if(!e.theirs)return;let t=we(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return v(e,{failed:n})}xe("giving_way",{file:e}),v(e,{set_aside:e.now,now:t}),js(e,t,e.theirs.version),xe("gave_way",{file:e})}function Cf(e){e.theirs&&(v(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),Ro(e),xe("unwritten",{file:e}))}var Do=({theirs:e})=>e?.text===null;function Lf(e){Do(e)&&(In(e.kind,e.id),v(e,{saved:e.now,theirs:void 0,failed:void 0}),B(`${e.file} stays deleted.`),xe("left_deleted",{file:e}))}function If(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e,o=e.is_taken;f({typed:void 0}),De(e,t),v(e,{set_aside:o?void 0:n})}var Wf=e=>(e.theirs??e).version;function Ef(e,t){v(e,{id:t,file:t}),xe("renamed",{file:e,renamed:n=>n})}async function Nf(e){let{version:t,text:n}=await Fe(e.file),o=we(n);if(!o||e.theirs||t===e.version)return;let i=_u(e.now,o);if(Y(e))return v(e,{version:t,now:i(e.now),saved:o});v(e,{version:t,now:o,saved:o}),xe("renamed",{file:e,renamed:i})}var jf=e=>e.shipped||!e.file?[]:[[e.file,Wf(e)]];async function Du(e,t,n,o){let i=e.file,r=()=>Wf(e)===t&&e.file===i;if(!r()||(await Su(e),!r()))return!1;o(),await Au();let l=await Wv(i,n);return await Su(e),r()&&(Of(e,l),Y(e)&&!e.theirs&&xe("unwritten",{file:e})),!0}async function Wv(e,t){let n=await t(e);return n===null?{version:n,text:null}:Fe(e)}var Au=()=>new Promise(e=>setTimeout(e,Mv));var Ev=400,Nv=2e3,Ou=new WeakMap;function qf(e,t){clearTimeout(Ou.get(e)),Ou.set(e,window.setTimeout(()=>{Zt(e)},t))}var En=(e=a.run)=>qf(e,Ev),jv=e=>e===a.run||e===a.order?.open;async function Zt(e=a.run){clearTimeout(Ou.get(e));try{await Yt(e),Y(e)&&!e.theirs&&jv(e)&&En(e)}catch(t){if(!(t instanceof y))throw t;t.may_pass&&qf(e,Nv)}}async function Ft(){for(let e of[a.run,a.order?.open])e?.file&&Y(e)&&await Zt(e)}var Hf=Promise.resolve(),Pu=0;function Xt(){if(!Pu&&!Hv().length)return;++Pu;let e=Hf.then(qv).finally(()=>--Pu);return Hf=e.catch(()=>{}),e}var Hv=()=>[...me.map(e=>a.formulas[e]),...ye.map(e=>a.beside[e])].filter(e=>e!==void 0&&Y(e)&&!e.theirs);async function qv(){for(let e of me){let t=a.formulas[e];!t||!Y(t)||t.theirs||(t.shipped&&e!=="apart"&&await Wn(a.run),await Yt(t))}for(let e of ye){let t=a.beside[e];t&&Y(t)&&!t.theirs&&await Yt(t)}}var Ct=e=>gn(a.run.file,e);function Ze(e,t){let n=Ct(e);return t?.some(o=>o.file===n)?n:e}function Uf(e){let t=a.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=Ze(String(n?.mould??""),a.files?.moulds);return{file:ti("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(t.name??""),sell:t.sell??"",...t.spoilage===void 0?{}:{spoilage:t.spoilage},pour:{mould:r,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},...Uv(t)}}}function Uv(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}function Ie(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}var Nn=({lines:e})=>Array.isArray(e)?e:[];function bn(e){let t=Nn(e);return t.length>0&&t.every(({run:n,pieces:o})=>n&&typeof o=="number")}var bt=new Map,rr=new Set,zv={changed:{},unreadable:[]},Ao=()=>new Set([...me.flatMap(e=>a.formulas[e]??[]),...ye.flatMap(e=>a.beside[e]??[])]);function ii(){let e=Kv(),t=new Set([...Ao()].map(({file:o})=>o));for(let o of bt.keys())!e.has(o)&&!t.has(o)&&bt.delete(o);for(let o of rr)e.has(o)||rr.delete(o);let n=[...e].filter(o=>!bt.has(o));return n.length?Jv(n):void 0}async function Jv(e){for(let[t,n]of await zf(e))bt.has(t)||bt.set(t,n)}async function zf(e){let t=e.filter(o=>!rr.has(o)),n=t.length?await zi(new Map(t.map(o=>[o,null]))):zv;return Cu(n.unreadable),new Map(e.map(o=>[o,n.changed[o]??null]))}var Bu=async e=>(await zf([e])).get(e)??null,Fu=()=>new Map([...bt].filter(([e])=>!rr.has(e)));function Kv(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add(Ct(o)),o.includes("..")||e.add(o))},n=a.run.now;e.add(Ct("studio.json")),t($(n,"/pour/mould")),t($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])t($(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||t($(n,`/${o}/formula`));for(let{file:o,now:i}of Ao()){let r=i.own_fats;typeof r=="string"&&r&&e.add(Ge(o)+r).add(r)}t($(a.beside.studio?.now,"/own_tips"));for(let o of Vv())e.add(o);for(let o of ye)e.delete(a.beside[o]?.file??"");return e}function Vv(){let{open:e}=a.order??{},t=new Set(e?Nn(e.now).map(({run:p})=>gn(e.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:r=[],tips:l=[]}=a.files??{},d=[...n,...o,...i,...r,...l].filter(({shipped:p})=>!p),c=-1;for(;c!==t.size;){c=t.size;for(let{file:p,used_by:m=[]}of d)m.some(_=>t.has(_))&&t.add(p)}return e&&t.size&&t.add(gn(e.file,"studio.json")),t.delete(a.run.file),t}function Jf(e,{changed:t}){let n=Object.keys(t).filter(o=>bt.has(o)&&bt.get(o)===e.get(o));for(let o of n)bt.set(o,t[o]);return n}var Cu=e=>e.forEach(t=>rr.add(t));function Kf(){return[...Ao()].flatMap(({file:e,version:t})=>{let n=bt.get(e)??t;return bt.delete(e),n===t?[]:[e]})}var Vf=0,Po=()=>Vf;function Lu(e){++Vf;for(let{file:t}of Ao())e.includes(t)&&Mu.add(t);f({is_old:!0,changed_beside:Qf(a.changed_beside,e)})}var Mu=new Set,Qf=(e,t)=>[...new Set([...e,...t])];function Gf(){if(!a.changed_beside.length)return;let e=a.changed_beside.filter(t=>!Mu.has(t)&&!xf(t,bt.get(t)??null));Mu.clear(),f({changed_beside:[]}),e.length&&(f({taken_in:{files:Qf(a.taken_in?.files??[],e),since:Date.now()}}),B(Iu()))}function Iu(){let{files:e=[]}=a.taken_in??{};if(!e.length)return"";let[t,n,o]=e.length===1?["was","it","it is"]:["were","them","they are"];return`${Ie(e)} ${t} changed outside this page: the figures are of ${n} as ${o} now.`}var Qv=5e3;function Yf(){a.taken_in&&Date.now()-a.taken_in.since>Qv&&f({taken_in:void 0})}var Gv=1e3,Yv=450,Hs=!1,Oo=!1,Wu=0;function ce(){f({is_old:!0}),Hs?Oo=!0:ri()}async function ri(){if(Hs){Oo=!0;return}Hs=!0,Zf(!1);try{do Oo=!1,await Zv();while(Oo)}finally{Hs=!1,Zf(!0)}}async function eh(){let{run:e}=a,t={file:e.file,run:e.now},n=await Fm(t)?.catch(()=>{});!n||e!==a.run||a.plan||Tf()||(f({plan:n,planned:t}),Tu(n))}var Zf=e=>{document.documentElement.dataset.settled=String(e)};function Xf(){let{run:e}=a,{apart:t}=a.formulas,{file:n,now:o}=e;return()=>{let i=e===a.run&&(n===e.file||o===e.now);return t===a.formulas.apart&&(t!==void 0||i)}}async function Zv(){let e=Xf();try{let t=Xt();t&&await t;let n=ii();n&&await n,e=Xf();let{apart:o}=a.formulas;if($n(o?"apart":"run"))return f({is_old:!0});let i=Po(),r=o?Uf(o.file):{file:a.run.file,run:a.run.now},l=await bs(r);if(window.clearTimeout(Wu),!e())return void(Oo=!0);f({plan:l,planned:r,complaint:void 0}),Tu(l);let d=i===Po();f({is_old:Oo||!d}),d&&Gf()}catch(t){if(!(t instanceof y))throw t;if(!e())return void(Oo=!0);Xv(t)}}function Xv(e){f({is_old:!0}),window.clearTimeout(Wu);let t=()=>{f({complaint:e.complaint}),vf(e.complaint)};a.complaint||!a.plan?t():Wu=window.setTimeout(t,Yv),e.may_pass&&window.setTimeout(ce,Gv)}var th=2e3,lt=e=>f({bench:{...a.bench,...e}}),ek=()=>lt({acts:at()});addEventListener("storage",({key:e})=>{e===oi()&&ek()});function qs(){let{file:e}=a.run;!e||a.bench.run===e||(f({bench:{run:e,batches:[],complaints:[],acts:at()}}),wn().then(ju))}function nh(e){let{file:t}=a.run;bf(e,t),a.bench.run===e&&lt({run:t,acts:at()}),a.bench.run===t&&wn()}function oh(){let{run:e,version:t}=a.bench;return t===void 0||e!==a.run.file?void 0:{run:e,version:t}}var sr=0;async function wn(){let{run:e}=a.bench,t=sr;try{let n=await af(e);if(e!==a.bench.run)return;if(t!==sr)return await wn();ih(n)}catch(n){if(!(n instanceof y))throw n;if(e!==a.bench.run)return;lt({failed:H(n.complaint)}),rh(n)&&setTimeout(()=>a.bench.failed!==void 0&&void wn(),th)}}var ih=({batches:e,version:t,complaints:n=[]})=>lt({batches:e,version:t,complaints:n.map(({line:o})=>o),failed:void 0}),rh=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t),jn=e=>a.bench.batches.find(t=>t.batch===e),Nu=e=>a.bench.acts.filter(({run:t,batch:n})=>t===a.bench.run&&n===e),Hn=e=>Nu(e).length>0;function qn(e,t){let n=Nu(e).find(i=>i.key===t),o=jn(e)?.ticks[t]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function Mo(e){let t=Nu(e).find(n=>n.reading!==void 0);return(t?t.reading:jn(e)?.weigh_cup)??""}function sh(e,t,n){let{run:o}=a.bench,r=jn(e)!==void 0||!a.planned?void 0:re(a.planned.run);$f({run:o,batch:e,seen:t,text:r,...n}),lt({acts:at(),chosen:e,told:void 0}),ju()}var ah=(e,t,n,o)=>sh(e,t,{key:n,done:o}),lh=(e,t,n)=>sh(e,t,{reading:n||null}),Eu=!1;async function ju(){if(!Eu){Eu=!0;try{await navigator.locks.request(oi(),tk)}finally{Eu=!1}at().length&&setTimeout(()=>{ju()},th)}}async function tk(){for(let e=vu();e;e=vu())if(!await nk(e))return}async function nk(e){let{id:t}=e;try{let n=await ok(e);return++sr,Cs(o=>o.id===t),ik(n,e.run),!0}catch(n){if(!(n instanceof y))throw n;return rh(n)?(lt({unsent:H(n.complaint)}),!1):(await rk(e,n),!0)}}function ok({run:e,text:t,batch:n,seen:o,key:i,done:r,reading:l}){let d={run:e,text:t,batch:n,seen:o};return i!==void 0?lf({...d,key:i,done:r??!1}):uf({...d,reading:l??null})}function ik(e,t){let n=at();if(t!==a.bench.run)return lt({acts:n,unsent:void 0});let i=[...a.bench.batches.filter(r=>r.batch!==e.batch),e].sort((r,l)=>r.batch-l.batch);lt({acts:n,batches:i,unsent:void 0})}async function rk(e,{complaint:t}){++sr,Cs(o=>o.run===e.run&&o.batch===e.batch);let n=`Not taken: ${H(t)}.`;lt({acts:at(),unsent:void 0,told:{batch:e.batch,words:n}}),B(n),ce(),await wn()}async function ar(e){let{run:t}=a.bench;await uh(e,async()=>{let n=await df(t,e);return Cs(o=>o.run===t&&o.batch===e),n})}var Hu=e=>uh(e,()=>cf(a.bench.run,e));async function uh(e,t){let{run:n}=a.bench;try{let o=await t();if(++sr,n!==a.bench.run)return;ih(o),lt({acts:at(),told:void 0,chosen:e})}catch(o){if(!(o instanceof y))throw o;lt({told:{batch:e,words:H(o.complaint)}})}}var dh=e=>lt({chosen:e,told:void 0}),ch=()=>lt({told:void 0});var sk=300,ak=1200,Us="",ph=0;function lr(){let e={run:{file:a.run,now:a.run.now}};for(let t of me){let n=a.formulas[t];n&&(e[t]={file:n,now:n.now})}for(let t of ye){let n=a.beside[t];n&&(e[t]={file:n,now:n.now})}return e}function Bo(e=""){let t=performance.now();e&&e===Us&&t-ph<=ak&&a.past.length||qu(lr()),f({future:[]}),Us=e,ph=t}var qu=e=>f({past:[...a.past,e].slice(-sk)});function Un(e){qu(mh(lr(),e,()=>e.saved??{}))}function mh(e,t,n){let o=Object.entries(e).map(([i,r])=>r.file===t?[i,{file:t,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function Uu(e,t){let n=o=>o.map(i=>mh(i,e,t));f({past:n(a.past),future:n(a.future)})}function ur(){let e=a.past.at(-1);e&&(f({past:a.past.slice(0,-1),future:[...a.future,lr()]}),fh(e,"Undone"))}function zu(){let e=a.future.at(-1);e&&(f({past:[...a.past,lr()],future:a.future.slice(0,-1)}),fh(e,"Redone"))}function fh(e,t){Us="",f({typed:void 0});for(let n of[...ye,...me,"run"])lk(n,e);B(t)}function lk(e,t){let n=t[e];if(Ls(e))return uk(e,n);let o=e==="run"?n?.file===a.run:a.formulas[e]!==void 0;!n||!o||(e!=="run"&&_n(e,n.file),n.file.now!==n.now&&De(n.file,n.now))}function uk(e,t){t&&t.file===a.beside[e]&&t.file.now!==t.now&&De(t.file,t.now)}var si=e=>e===a.run||me.some(t=>a.formulas[t]===e)||ye.some(t=>a.beside[t]===e);Mt("giving_way",({file:e})=>{si(e)&&(Us="",qu(lr()),f({typed:void 0}))});for(let e of["copied","renamed"])Mt(e,({file:t,renamed:n})=>Uu(t,n));var dk=1200,Ju="",hh=0;function ai(e,t=""){let n=performance.now(),o=t&&t===Ju&&n-hh<=dk&&e.past.length;v(e,{past:o?e.past:[...e.past,e.open.now],future:[]}),[Ju,hh]=[t,n]}function zs(e){let t=e.past.at(-1);t&&(v(e,{past:e.past.slice(0,-1),future:[...e.future,e.open.now]}),gh(e,t,"Undone"))}function Js(e){let t=e.future.at(-1);t&&(v(e,{past:[...e.past,e.open.now],future:e.future.slice(0,-1)}),gh(e,t,"Redone"))}function gh({open:e},t,n){Ju="",f({typed:void 0}),De(e,t),B(n)}function zn(e){return e==="run"?a.run:e==="order"?a.order?.open:Ls(e)?a.beside[e]:a.formulas[e]}var ck=e=>zn(e)?.now,g=(e,t)=>$(ck(e),t),D=(e,t)=>String(g(e,t)??"");function X(e,t){let n=g(e,t);return Array.isArray(n)?n:[]}function fe(e,t,n){let o=g(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function _h(e,t){e==="order"&&a.order?ai(a.order,t):Bo(t===void 0?"":`${e} ${t}`)}function Z(e,t,n){let o=zn(e);!o||$(o.now,t)===n||(_h(e,t),De(o,P(o.now,t,n)))}function $h(e,t){let n=zn(e);n&&(_h(e),f({typed:void 0}),De(n,t(n.now)))}function Lt(e){Bo(),f({typed:void 0});for(let[t,n]of e){let o=zn(t);o&&De(o,n(o.now))}}var Vu=(e,t)=>{let{[e]:n,...o}=a.beside;f({beside:t?{...o,[e]:t}:o})};function Ks(e){for(let t of ye)a.beside[t]===e&&Vu(t,void 0)}async function pk(e,t){try{return await Se(e,t)}catch(n){if(!(n instanceof y||n instanceof SyntaxError))throw n;return}}async function Jn(e,t,n,o=()=>!0){let i=()=>a.beside[e]?.file===n?a.beside[e]:void 0;if(i())return i();let r=await pk(t,n);return i()||!o()?i():(Vu(e,r),r&&Y(r)&&(Un(r),xe("unwritten",{file:r})),r?.theirs&&xe("conflict",{file:r}),r)}var Ku=()=>Ct("studio.json");async function li(e=!1){let t=Ku(),n=(a.files?.studios??[]).some(o=>o.file===t);a.beside.studio?.file!==t&&(n||e?await Jn("studio",tr,t,()=>t===Ku()):Vu("studio",void 0))}async function Vs(){a.run.shipped&&await Wn(a.run);let e=Ku();await Jn("studio",tr,e)||(await mk(e),await Jn("studio",tr,e))}async function mk(e){try{Bt(e);let{version:t}=await Yo({file:e,version:null,text:re({schema:"brimwright.studio/1"})});Ln(e,t)}catch(t){if(!(t instanceof y)||t.status!==409)throw t}To(tr,e)}var bh=(e,t)=>Ge(e.file)+t;async function fk(e){try{return we((await Fe(e)).text)!==void 0}catch(t){if(!(t instanceof y))throw t;return!1}}async function Qs(e){let t=a.formulas[e];if(!t)return;t.shipped&&await Wn(t);let n=String($(t.now,"/own_fats")??"");if(n){let l=bh(t,n);return Jn("own_fats",Gt,await fk(l)?l:n)}let o=(a.files?.fats??[]).find(l=>!l.shipped&&Ge(l.file)===Ge(t.file)),i={schema:"brimwright.fats/1",fats:[]},r=o?.file??await Gu(Gt,bh(t,"my.fats.json"),i);return Z(e,"/own_fats",st(r)),Jn("own_fats",Gt,r)}async function Qu(){a.run.shipped&&await Wn(a.run);let e="/pipe/beads/own_tips",n=String($(a.run.now,e)??"")||String($(a.beside.studio?.now,"/own_tips")??"");if(n)return Jn("own_tips",Cn,Ct(n));let o=Ge(a.run.file),i=(a.files?.tips??[]).find(d=>!d.shipped&&Ge(d.file)===o),r={schema:"brimwright.tips/2",tips:[]},l=i?.file??await Gu(Cn,`${o}my.tips.json`,r);return a.beside.studio?Z("studio","/own_tips",st(l)):Z("run",e,st(l)),Jn("own_tips",Cn,l)}async function dr(e,t){await Jn(e===Gt?"own_fats":"own_tips",e,t)&&f({held_open:t})}function Kn(){let{view:e,held_open:t,beside:n}=a,o=e==="fats"?n.own_fats:e==="tips"?n.own_tips:void 0;return o&&o.file===t?o:void 0}async function Gs(e,t){let n=e===Gt;await dr(e,await Gu(e,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[t]}:{schema:"brimwright.tips/2",tips:[t]}))}async function Gu(e,t,n){let{file:o}=await $t({kind:e,name:t,text:re(n)});return To(e,o),o}function wh(e,t){let n=(i,r)=>String($(i,r)??"").endsWith(st(t));for(let i of me)e===a.beside.own_fats&&n(a.formulas[i]?.now,"/own_fats")&&Z(i,"/own_fats",e.file);let o="/pipe/beads/own_tips";e===a.beside.own_tips&&n(a.run.now,o)&&Z("run",o,e.file)}var Fo=[],ui=[],cr=()=>Fo.at(-1),Zu=()=>ui.at(-1);function Xs(e){Fo=[...Fo,e],ui=[],f({list_told:e.words}),B(e.words)}async function vh(){let e=cr();e&&(await e.undo(),Fo=Fo.slice(0,-1),ui=[...ui,e],f({list_told:""}),B("Undone"),await wt())}async function kh(){let e=Zu();e&&(await e.redo(),ui=ui.slice(0,-1),Fo=[...Fo,e],f({list_told:e.words}),B("Redone"),await wt())}async function wt(){let[e,t]=await Promise.all([$s(),mm()]);f({files:e,removed:t})}async function xh(e,t){let{$schema:n,...o}=JSON.parse((await Fe(t.file)).text),i=`${t.name||di(t.file)}, copy`,r={...o,...e.called&&{[e.called]:i},...e.has_id?{id:crypto.randomUUID()}:{}},l=e.called?e.new_name(So(e,r)):Ot(i,Xu(t.file)),{file:d}=await $t({kind:e,name:l,text:re(r),from:t.file});await wt();let c="";return Xs({words:`Copied ${t.name||t.file}.`,undo:async()=>c=await Ys(d,!0),redo:()=>Zs(d,c)}),d}var Xu=e=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(e)?.[0]??"",di=e=>st(e).slice(0,-Xu(e).length||void 0),Th=(e,t)=>Ge(e)+t+Xu(e),yh=e=>[a.run,a.order?.open,...me.map(t=>a.formulas[t]),...ye.map(t=>a.beside[t])].find(t=>t?.file===e);async function Rh(e,t,n){let o={name:t.name,note:t.note,stem:di(t.file)};await Yu(e,t.file,n),await wt();let i=Th(t.file,n.stem);Xs({words:`Changed ${n.name||i}.`,undo:()=>Yu(e,i,o),redo:()=>Yu(e,t.file,n)})}async function Yu(e,t,{name:n,note:o,stem:i}){let r=yh(t),l=r??await Se(e,t),{note:d,...c}=l.now,p={...c,...o&&{note:o}},m=e.called?P(p,`/${e.called}`,n||void 0):p;if(re(m)!==re(l.now)&&(r&&si(r)&&Bo(),r===a.order?.open&&a.order&&ai(a.order),De(l,m),await Yt(l),l.theirs))throw new Error(`${t} was changed outside this page just now. Look at it again.`);let _=Th(t,i);if(_===t)return;[t,_].forEach(Bt);let{renamed_in:b}=await dm(t,_);b.forEach(Bt),r&&Ef(r,_);for(let w of b){let x=yh(w);x&&await Nf(x)}}async function Ys(e,t){Bt(e);let{removed:n}=await cm(e,t);a.run.file===e&&ni(),a.order?.open.file===e&&f({order:void 0});let o=ye.map(i=>a.beside[i]).find(i=>i?.file===e);return o&&Ks(o),n}function Zs(e,t){return Bt(e),pm(t)}async function Sh(e,t){let n=await Ys(e.file,t);await wt(),Xs({words:`Removed ${e.name||e.file}.`,undo:()=>Zs(e.file,n),redo:async()=>n=await Ys(e.file,!0)})}async function Dh({removed:e,file:t,name:n}){await Zs(t,e),await wt();let o="";Xs({words:`${n||t} is back.`,undo:async()=>o=await Ys(t,!0),redo:()=>Zs(t,o)})}async function Ah({removed:e,file:t,name:n}){f({removed:await fm(e),list_told:""}),B(`${n||t} is deleted for good.`)}var Ph=0;function ve(){let e=++Ph;return()=>e===Ph}function Oh(e){let t=$(a.run.now,`/${e}/formula`);return typeof t=="string"&&t?Ze(t,a.files?.formulas):void 0}async function Vn(){await Promise.all(["pour","pipe"].map(hk))}async function hk(e){let t=Oh(e),n=()=>t!==void 0&&a.formulas[e]?.file===t;if(n()||(_n(e,Mh(t)),t===void 0||n()))return;let o=await gk(t);if(!o||Oh(e)!==t||n())return;let i=Mh(t);_n(e,i??o),!i&&(Y(o)&&(Un(o),xe("unwritten",{file:o})),o.theirs&&xe("conflict",{file:o}))}var Mh=e=>me.map(t=>a.formulas[t]).find(t=>t&&t.file===e),ed=new Map;function gk(e){let t=ed.get(e)??Se(xo,e).catch(_k);return ed.set(e,t),t.finally(()=>ed.delete(e))}function _k(e){if(!(e instanceof y||e instanceof SyntaxError))throw e}var pr=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function ci(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=r=>20+t+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:l,indices:d,material:c}]})=>({name:r,positions:new Float32Array(e,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(e,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function Fh(e,t,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:d,indices:c}=e;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let b=3*c[p+_],w=3*c[p+(_+1)%3],x=d[b+i]-t,K=d[w+i]-t;if(x>0==K>0)continue;let Be=x/(x-K),go=[1e3*(d[b]+Be*(d[w]-d[b])),1e3*r*(d[b+o]+Be*(d[w+o]-d[b+o]))];x>0?m.push(go):m.unshift(go)}m.length===2&&l.push([m[0],m[1]])}return l}function Ch(e){let t=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of e){let r=t(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of e){let r=[],l=n.get(t(i[0]))?.shift();for(;l;)r.push(l[0]),l=n.get(t(l[1]))?.shift();r.length>2&&o.push(r)}return o}function mr(e){let t=e.positions,[n,o,i,r,l,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<t.length;p+=3)i=Math.min(i,t[p]),r=Math.max(r,t[p]),l=Math.min(l,t[p+1]),d=Math.max(d,t[p+1]),n=Math.min(n,t[p+2]),o=Math.max(o,t[p+2]);let c=n+(o-n)*.50137;return{loops:Ch(Fh(e,c)),left:1e3*i,right:1e3*r,floor:1e3*l,brim:1e3*d,cut_y:-1e3*c}}function Lh(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(r=>Ch(Fh(e,n+r*o,"level"))).reduce((r,l)=>Bh(l)>1.001*Bh(r)?l:r)}function Bh(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function td(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([r,l],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(l,p)>t||Math.max(l,p)<t))for(let m of l===p?[r,c]:[r+(t-l)/(p-l)*(c-r)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[e.left,e.right]}var Ih=40,$k=2e3,nd=0;async function Wh(e){let t=await Vt({kind:"glb",gauge:e}),n=ci(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function pi(e){let[t,n]=await Promise.all([Mn(e),Wh(e)]),o=mr(n);return{gauge:t,outline:o,above:Lh(n,o)}}async function bk(e){let{pockets:t}=await Mn(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:Ih},(i,r)=>`${(n*(r+1)/Ih).toFixed(4)} mm`);return Mn({...e,depth:o})}function It(){wk()}async function wk(){let e=$(a.run.now,"/pour/mould");if(typeof e!="string")return;let t=++nd,n=Ze(e,a.files?.moulds);try{let[o,i]=await Promise.all([bk({file:n}),Wh({file:n})]);t===nd&&f({measured:{mould:n,gauge:o,outline:mr(i)},measuring_failed:void 0})}catch(o){if(t!==nd)return;if(!(o instanceof y))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(It,$k)}}var od=(e,t="")=>_s("GET",`/api/record?run=${encodeURIComponent(e)}&batch=${encodeURIComponent(t)}`),Eh=e=>On("/api/record/begin",e),ea=e=>On("/api/record/note",e);var yk=1e4,rd=2500,sd=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",sd);var ta=[],mi=()=>`notes ${a.files?.folder??""}`;function yn(){try{return[...JSON.parse(localStorage.getItem(mi())??"[]"),...ta]}catch{return ta}}function ad(e){try{e.length?localStorage.setItem(mi(),JSON.stringify(e)):localStorage.removeItem(mi()),ta=[]}catch{ta=e}}var id=(e,t)=>e.batch===t.batch&&e.key===t.key,Qn=(e,t)=>a.record.acts.filter(n=>id(n,{batch:e,key:t})).at(-1);function Nh(e){let t=yn(),n=t.filter(i=>id(i,e)).at(-1),o={...e,seen:n?.seen??e.seen,id:crypto.randomUUID(),tab:sd,at:Date.now()};ad([...t.filter(i=>!id(i,e)||i.was_sent&&!i.refused),o])}var ld=e=>ad(yn().map(e)),na=(e,t)=>ld(n=>n.id===e?{...n,...t}:n),fr=e=>ad(yn().filter(t=>!e(t))),vk=({is_typed:e,lacks:t,refused:n,at:o})=>!n&&!t&&(!e||Date.now()-o>=rd),ud=()=>yn().find(e=>vk(e)&&(e.tab===sd||Date.now()-e.at>yk));var jh=2e3,We=e=>f({record:{...a.record,...e}}),fi=()=>We({acts:yn()});addEventListener("storage",({key:e})=>{e===mi()&&fi()});function oa(){let{file:e}=a.run;!e||a.record.run===e||(f({record:{run:e,batches:[],acts:yn(),chosen:kk(e)}}),Gn().then(hr))}function Hh(e){a.record.run===e&&(We({run:a.run.file}),Gn())}var qh=e=>`record ${e}`,kk=e=>sessionStorage.getItem(qh(e))??void 0,pd=()=>a.record.run===a.run.file?a.record.version:void 0,cd=0;async function Gn(){let{run:e,chosen:t}=a.record,n=cd;try{let o=await od(e,t);if(e!==a.record.run)return;if(n!==cd||t!==a.record.chosen)return await Gn();let{batches:i,run_batches:r}=o.record;We({batches:i,of:r??a.record.of,version:o.version,failed:void 0})}catch(o){if(!(o instanceof y))throw o;if(e!==a.record.run)return;We({failed:H(o.complaint)}),Uh(o)&&setTimeout(()=>a.record.failed!==void 0&&void Gn(),jh)}}var Uh=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t);function ia({record:e},t){if(++cd,t!==a.record.run)return;let n=new Set(e.batches.map(({begun:d})=>d.id)),o=d=>n.has(d.begun.id),i=d=>e.batches.find(({begun:c})=>c.id===d.begun.id)??d,r=e.batches.filter(({begun:d})=>!a.record.batches.some(c=>c.begun.id===d.id)),l=[...a.record.batches.map(d=>o(d)?i(d):d),...r];We({batches:l,of:e.run_batches??a.record.of})}function ra(){let{batches:e,chosen:t}=a.record;return e.find(({begun:n})=>n.id===t)??e.at(-1)}function gr(e){sessionStorage.setItem(qh(a.record.run),e),We({chosen:e}),Gn()}var Co=(e,t)=>a.record.batches.filter(n=>n.number===e&&(!t||new Date(n.begun.begun_at)>=new Date(t))).at(-1),sa=({pieces:e,written:t})=>`${e} ${e===1?"piece":"pieces"}, ${t}`;function aa({blanks:e,cured:t},n){let o=/^cured\.(.+)$/.exec(n)?.[1],i=o&&t?.find(({on:r})=>r===o);return o?i?sa(i):"":e?.find(r=>r.key===n)?.noted??""}function md(e,{key:t,text:n,value:o,is_left:i,lacks:r}){let l=aa(e,t),d=Qn(e.begun.id,t);if(o===l&&!r&&(!d||!d.was_sent&&d.seen===l))return d&&fr(({id:m})=>m===d.id),fi();if(d?.value===o&&!d.lacks==!r&&(d.refused??!d.is_typed))return;let{run:p}=a.record;Nh({run:p,batch:e.begun.id,key:t,text:n,value:o,seen:l,is_typed:!i,lacks:r}),fi(),i?hr():setTimeout(()=>{hr()},rd+50)}var Yn=(e,t,n)=>md(e,{key:t,text:n,value:n,is_left:!0});function zh(e){let{refused:t,value:n}=e;if(!t)return;let o=t.is_asked?{confirmed:[n]}:{seen:t.noted??e.seen};na(e.id,{...o,refused:void 0}),fi(),hr()}function Jh(e){fr(({id:t})=>t===e.id),fi()}var dd=!1;async function hr(){if(!dd){dd=!0;try{await navigator.locks.request(mi(),xk)}finally{dd=!1}yn().some(e=>!e.refused&&!e.lacks)&&setTimeout(()=>{hr()},jh)}}async function xk(){for(let e=ud();e;e=ud())if(!await Rk(e))return}var Tk=({batch:e,run:t})=>a.record.batches.some(({begun:n})=>n.id===e)?a.record.run:t;async function Rk(e){let{id:t,batch:n,key:o,value:i,seen:r,confirmed:l}=e,d=Tk(e);na(t,{was_sent:!0});try{let c=await ea({run:d,batch:n,act:t,set:{[o]:i||null},seen:{[o]:r||null},confirmed:l});return fr(p=>p.id===t),Sk(e,c),ia(c,d),We({acts:yn(),unsent:void 0}),!0}catch(c){if(!(c instanceof y))throw c;return Uh(c)?(We({unsent:H(c.complaint)}),!1):(await Dk(e,c),!0)}}function Sk({batch:e,key:t},{record:n}){let o=n.batches.find(({begun:i})=>i.id===e);ld(i=>i.batch!==e?i:i.key===t?o?{...i,seen:aa(o,t)}:i:i.refused&&!i.refused.is_asked&&i.refused.noted===void 0?{...i,refused:void 0}:i)}async function Dk({id:e,value:t},{complaint:n}){let{asks:o,choices:i,problem:r}=n,l=o==="seen"?i?.[0]?.seen??"":void 0,d=l===!0?"":l,c=o?r:H(n);d===t?fr(p=>p.id===e):na(e,{refused:{words:c,is_asked:o==="confirmed",noted:d}}),fi(),await Gn()}var la=e=>a.record.acts.filter(t=>t.batch===e&&(t.refused??t.lacks)).length;async function ua(e,t){if(!e||!t)return;let n=e.blanks?e:await Ak(e.begun.id),o=n?.blanks?.filter(fd)??[];n&&o.length===1&&Yn(n,o[0].key,t)}async function Ak(e){try{return(await od(a.record.run,e)).record.batches.find(({begun:t})=>t.id===e)}catch(t){if(!(t instanceof y))throw t;return}}var fd=({key:e})=>/^topping(-\d+)?\.cup$/.test(e);var _r=()=>f({own_fats:{}});function Zn(e){let t=$r(e);return Array.isArray(t)?[...t,...a.fats]:a.fats}function $r(e){let t=a.formulas[e],n=$(t?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=a.beside.own_fats;if(o&&[Ge(t.file)+n,n].includes(o.file))return Vh(o.now)??"none";let i=`${t.file}
${n}`,r=a.own_fats[i];return r||(Kh(i,"waiting"),Pk(n,t.file).then(l=>Kh(i,l)),"waiting")}var Kh=(e,t)=>f({own_fats:{...a.own_fats,[e]:t}});async function Pk(e,t){for(let n of new Set([Ge(t)+e,e])){let o=Vh(await Ok(n));if(o)return o}return"none"}var Vh=e=>Array.isArray(e?.fats)?e.fats.map(Mk):void 0;async function Ok(e){try{return we((await Fe(e)).text)}catch{return}}var Mk=({id:e,name:t,saponification_value:n})=>({id:String(e??""),name:String(t??e??""),own:Bk(n)});function Bk(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var hi=[],br;function da(){hi.length=0;for(let{file:e,shipped:t}of a.files?.moulds??[])t||hi.push(e);br===void 0&&Qh()}function hd(e){let t=a.own_moulds[e];return!t&&e!==br&&!hi.includes(e)&&hi.push(e),br===void 0&&hi.length&&Qh(),t}async function Qh(){for(;(br=hi.shift())!==void 0;){let e=br,t=await Ck(e);t&&f({own_moulds:{...a.own_moulds,[e]:t}})}}var Fk=2e3;async function Ck(e){try{let{pockets:t}=await Mn({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof y))throw t;if(t.may_pass){window.setTimeout(()=>hd(e),Fk);return}let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var Zh=()=>f({own_tips:{}}),gd=!1;function wr(){return!a.tips&&!gd&&(gd=!0,xm().then(e=>f({tips:e}),Xh).finally(()=>gd=!1)),a.tips??[]}function _d(e){let t=Ct(e),n=a.beside.own_tips;if(n?.file===t)return Yh(n.now);let o=a.own_tips[t];return o||!e||a.typed?o??[]:(Gh(t,[]),Fe(t).then(({text:i})=>Gh(t,Yh(we(i))),Xh),[])}var Gh=(e,t)=>f({own_tips:{...a.own_tips,[e]:t}});function Yh(e){let t=e?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function Xh(e){if(!(e instanceof y))throw e}var ca=300,Lk=5e3,ig=2e3,Ik=500,eg=!1,yr=new AbortController,rg=()=>yr.abort(),sg=()=>document.visibilityState==="hidden";function pa(){if(eg)return;eg=!0;let e=async()=>{yr=new AbortController;let t=await Wk(yr).then(()=>sg()?Lk:ca,()=>yr.signal.aborted?ca:ig);await tg(ca),await tg(t-ca,yr.signal),e()};e()}var tg=(e,t)=>new Promise(n=>{if(e<=0||t?.aborted)return n();setTimeout(n,e),t?.addEventListener("abort",()=>n())}),ag=()=>[a.run,...a.order?[a.order.open]:[],...a.mould?[a.mould.open]:[],...Ao()],$d=()=>{let e=oh();return e&&{...e,record:pd()}},lg=()=>new Map(ag().flatMap(jf)),ng=()=>JSON.stringify([[...lg().keys()],[...Fu().keys()],$d()?.run??null,pd()??null]);async function Wk(e){let t=Kf();t.length&&await og(t);let[n,o]=[lg(),Fu()],i=new Map([...o,...n]),r=[...o].every(([c,p])=>i.get(c)===p),l=r&&!sg()?await Ek(i,e):await zi(i,$d());l.bench!==void 0&&await wn(),l.record!==void 0&&await Gn(),Cu(l.unreadable),await Nk(n,l);let d=Jf(o,r?l:await zi(o));d.length&&await og(d)}async function Ek(e,t){let[n,o]=[ng(),Date.now()],i=window.setInterval(()=>{(ng()!==n||Date.now()-o>hm+ig)&&t.abort()},Ik);try{return await gm(e,$d(),t.signal)}finally{window.clearInterval(i)}}async function Nk(e,{changed:t}){let n=Ao();for(let o of ag()){let i=e.get(o.file);i===void 0||!(o.file in t)||(n.has(o)?await jk(o,i):await Du(o,i,Bu,()=>{}))}}async function jk(e,t){let n=!1,o=()=>{n=!0,Lu([e.file])};try{await Du(e,t,Bu,o)&&_r()}finally{n&&ce()}}async function og(e){Lu(e);try{await Au(),_r(),Zh(),f({measured:void 0}),It(),da(),await Promise.all([Vn(),li(!0)])}finally{ce()}}async function dg(e){let t=await Mm();f({files:t});let n=Om(t,e.run);try{await ma(n,n===e.run||!e.run?e.view:void 0)}catch(o){let i=o instanceof y?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function wd(){try{let[e,t]=await Promise.all([vm(),km()]);f({fats:e,catalogue:t})}catch(e){if(!(e instanceof y))throw e;e.may_pass?window.setTimeout(()=>{wd()},Hk):f({fault:e.message})}}var Hk=2e3,qk=()=>new Promise(e=>setTimeout(e,400)),bd={};function Lo(e,t){return ve(),ma(e,t)}async function ma(e,t="weigh"){if(!e)return f({view:"runs"});let n=bd={name:e},o=a.view;a.run.file&&Y(a.run)&&await Zt();let i=await Se(vo,e);if(bd!==n||(ni(i),qs(),await Promise.race([eh(),qk()]),a.run!==i))return;a.view===o&&bd===n&&f({view:t}),localStorage.setItem("run",i.file),Y(i)&&(Un(i),En());let r=ri().finally(It);await Promise.all([r,Vn(),li()]),pa()}var ug=()=>(a.files?.studios??[]).some(e=>e.file==="studio.json");async function fa(e){let t=ve(),n=a.run.now,o=n.losses??{},i={schema:"brimwright.run/2",id:crypto.randomUUID(),name:e.name,sell:e.sell,pour:{mould:e.mould,formula:e.formula}};e.slice&&(i.cut={bar:{thickness:e.slice},...ug()?{}:{kerf:""}}),ug()||(i.note=`Losses, scales and spoilage were taken over from "${String(n.name)}": check them.`,n.spoilage!==void 0&&(i.spoilage=n.spoilage),i.losses={pour:o.pour??{}},i.scales=n.scales??{},n.money&&!a.run.shipped&&(i.money=n.money));let{file:r}=await $t({kind:vo,name:Ot(e.name,".run.json"),text:re(i)});t()&&(le("set-up pour"),e.slice&&le("set-up cut"),await Lo(r,"set-up"))}var Uk="examples/plain_bars.run.json";function Xe(e){_r();let t=mn(a.view)?a.view:a.came_from;f({view:"formula",came_from:t,formula_of:e,picking:void 0,typed:void 0})}async function vr(e){let t=ve(),n=["pour","pipe"].find(i=>a.run.file&&a.formulas[i]?.file===e);if(n)return Xe(n);a.run.file||await ma(Uk,"reading");let o=await Se(xo,e);t()&&zk(o)}function zk(e){f({run_steps:{past:a.past,future:a.future},past:[],future:[]}),_n("apart",e),Y(e)&&Un(e),f({plan:void 0,complaint:void 0}),Xe("apart"),ri()}async function Jk(){let e=a.formulas.apart!==void 0;return await ha()?(f({view:e?"weigh":a.came_from,typed:void 0}),!0):!1}async function ha(){return a.formulas.apart?await Kk()?(ri(),!0):!1:!0}async function Kk(){try{await Xt()}catch(t){if(!(t instanceof y))throw t;return f({complaint:t.complaint}),!1}if(a.formulas.apart?.theirs)return B("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;_n("apart",void 0);let e={...a.dangers,apart:[]};return f({dangers:e,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function cg(e){let t=a.view==="formula"&&a.formulas[a.formula_of]===e,n=a.formulas.apart===e;for(let o of["pour","pipe"])a.formulas[o]===e&&_n(o,void 0);n&&await ha(),t&&f({view:n?"formulas":"set-up",typed:void 0})}async function yd(e){let{file:t}=a.formulas.apart;await Jk()&&Z("run",`/${e}/formula`,t)}var Vk=e=>({schema:"brimwright.formula/2",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),pg=e=>fg(Vk(e));async function mg(e,t){let{$schema:n,...o}=JSON.parse((await Fe(e)).text);await fg({...o,name:t},e)}async function fg(e,t){let n=ve(),o=Ot(String(e.name),".formula.json"),{file:i}=await $t({kind:xo,name:o,text:re(e),from:t});n()&&await vr(i)}var Qk=30,Gk=2e3,hg=0,vd=!1,kd=!1;function xd(e,t,n){let o=t==="mesh"?a.mesh:void 0;f({mould:{way:t,title:n,open:e,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),ga()}var en=()=>f({mould:void 0,mesh:void 0}),gi=(e,t,n)=>xd(So(Ye,e),t,n);async function gg(e,t){let n=ve(),o=await Se(Ye,e,t?crypto.randomUUID():e);if(!n())return!1;let i=String(o.now.name??e);return t&&v(o,{now:{...o.now,name:""}}),xd(o,"form",t?`A copy of ${i}`:`Change ${i}`),!0}async function _g({id:e,file:t,text:n}){let o=ve(),i=t?await Se(Ye,t,e):So(Ye,JSON.parse(n),e);return o()?(xd(i,"form",String(i.now.name??"").trim()||"A mould of your own"),!0):!1}var ie=()=>a.mould,q=()=>ie().open.now;function Te(e,t){ai(ie(),e),De(ie().open,P(q(),e,t))}var $g=()=>zs(ie()),bg=()=>Js(ie()),Yk=["name","note","owned","unmould_after"];function Td(e){let t=q(),n=Object.keys({...e,...t}).filter(l=>e?.[l]!==t[l]);(!e||n.some(l=>!Yk.includes(l)))&&v(ie(),{is_old:!0});let i=n.some(l=>ie().complaint?.field===`/${l}`),r=n.some(l=>!["name","note"].includes(l));(ie().is_old||i||r)&&ga()}function ga(){clearTimeout(hg),hg=window.setTimeout(()=>{Zk()},Qk)}async function Zk(){if(vd)return void(kd=!0);let{mould:e}=a;if(!e)return;let t=e.open.now;if(!(!Pt(t,"shape")&&!Pt(t,"mesh"))){if(er(t).length)return v(e,{complaint:void 0});vd=!0;try{let n=Ye.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await pi(o);e.open.now===t&&v(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof y))throw n;e.open.now===t&&e===a.mould&&Rd(n),n.may_pass&&window.setTimeout(ga,Gk)}finally{vd=!1,kd&&ga(),kd=!1}}}function Rd(e){let{field:t,problem:n,remedy:o,keep:i,entry:r}=e.complaint,l=t?`${n}; ${o}`:e.message;v(ie(),{complaint:{field:Bs(q(),t),line:l,keep:i&&{...i,at:Bs(q(),i.at)},about:r===void 0?void 0:Bs(q(),`${t}/${r}`)}})}var wg={};async function kr(e){ve();let t=wg={name:e},n=a.view;if(a.order?.open.file!==e){a.order&&Y(a.order.open)&&await Zt(a.order.open);let o=await Se(ko,e);if(wg!==t)return;let i=Y(o)?[o.saved??{}]:[];f({order:{open:o,past:i,future:[],times:""},typed:void 0}),Y(o)&&En(o)}a.view===n&&f({view:"order",typed:void 0}),pa()}function yg(){f({order:void 0,...a.view==="order"?{view:"orders"}:{}})}async function vg(e){let t=ve(),n={schema:"brimwright.order/1",id:crypto.randomUUID(),for:e,lines:[]},o=ko.new_name(So(ko,n)),{file:i}=await $t({kind:ko,name:o,text:re(n)});t()&&await kr(i)}var Ee=()=>a.order,kg=()=>zs(Ee()),xg=()=>Js(Ee());var _a=e=>Object.values(a.formulas).includes(e),_i=e=>Object.values(a.beside).includes(e),Tg=e=>`${String($(e,"/pour/formula"))}
${String($(e,"/pipe/formula"))}`;function Xk(e,t){$(e,"/pour/mould")!==$(t,"/pour/mould")&&It(),Tg(e)!==Tg(t)&&Vn(),ce(),En()}var ex=ce;function tx(e,t){for(let n of["pour","pipe"]){if(a.formulas[n]!==e)continue;let o=`/${n}/formula`,i=r=>String($(r,o)??"").endsWith(st(t))?P(r,o,e.file):r;Uu(a.run,i),i(a.run.now)!==a.run.now&&De(a.run,i(a.run.now))}}async function nx(e){e===a.run?(ni(),localStorage.removeItem("run"),f({view:"runs"})):e===a.mould?.open?en():e===a.order?.open?yg():_i(e)?Ks(e):await cg(e),await wt(),a.run.file&&ce()}function Rg(){Mt("edited",({file:e,before:t})=>{Yf(),e===a.run?Xk(t,e.now):_a(e)||_i(e)?ex():e===a.mould?.open?Td(t):e===a.order?.open&&En(e)}),Mt("gave_way",({file:e})=>{if(f({typed:void 0}),e===a.mould?.open)return Td();e!==a.order?.open&&(e===a.run&&(It(),Vn().then(ce)),ce())}),Mt("left_deleted",({file:e})=>{nx(e)}),Mt("unwritten",({file:e})=>{e===a.run||e===a.order?.open?Zt(e):(_a(e)||_i(e))&&ce()}),Mt("conflict",({file:e})=>{(_a(e)||_i(e))&&f({is_old:!0})}),Mt("renamed",({file:e})=>{_i(e)&&a.held_open!==void 0&&f({held_open:e.file}),e===a.run&&(localStorage.setItem("run",e.file),It(),Vn()),ce()}),Mt("copied",({file:e,from:t})=>{_a(e)&&tx(e,t),_i(e)&&wh(e,t),a.held_open===t&&f({held_open:e.file}),e===a.run&&(nh(t),Hh(t),localStorage.setItem("run",e.file),li().then(ce))})}var ut=s`<span aria-hidden="true">⚠</span> Danger`;function xr(e,t="",n){let o=Xn(e,n);return o.length?s`<div class="dangers" id=${t||u}>
    ${o.map(i=>s`<p class="danger"><strong>${ut}</strong> ${i}</p>`)}
  </div>`:u}function Xn(e,t){let n=e==="pour"?"pipe":"pour";return a.dangers[e==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>e==="apart"||o.batter!==n).filter(o=>t===void 0||o.batch_pieces===void 0||o.batch_pieces===t).map(o=>o.text)}function Sg(){let e=it(a.view)||a.view==="order"||or()==="apart",t=a.dangers.run.map(({text:n})=>({from:e?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var Dg=()=>Sg().length>0;function Ag(){let e=Sg(),t=rx(),n=t||it(a.view)?"":Iu();return!e.length&&!t&&!n?u:s`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?s`<div role="alert" class="dangers">
            ${e.map(({from:o,text:i})=>s`<p class="danger"><strong>${ut}</strong> ${o}${i}</p>`)}
          </div>`:u}
    ${t?s`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${ox()?s`<button type="button" @click=${ix}>To the question</button>`:u}
          </div>`:u}
    ${n?s`<div class="taken-in">
            <p>${n}</p>
            <button type="button" @click=${()=>f({taken_in:void 0})}>Close</button>
          </div>`:u}
  </section>`}var ox=()=>$n(or())!==void 0&&!it(a.view);function ix(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function rx(){if(!a.run.file||a.view==="reading")return"";let e=$n(or());if(e&&Do(e))return`${e.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`;if(e)return`${e.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`;let t=a.changed_beside;return a.is_old&&t.length?`${Ie(t)} ${t.length===1?"was":"were"} changed outside this page: what is struck through is not to be weighed.`:""}var vn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},$a=e=>(...t)=>({_$litDirective$:e,values:t}),$i=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:sx}=Xm,Pg=e=>e;var Mg=e=>e.strings===void 0,Og=()=>document.createComment(""),bi=(e,t,n)=>{let o=e._$AA.parentNode,i=t===void 0?e._$AB:t._$AA;if(n===void 0){let r=o.insertBefore(Og(),i),l=o.insertBefore(Og(),i);n=new sx(r,l,e,e.options)}else{let r=n._$AB.nextSibling,l=n._$AM,d=l!==e;if(d){let c;n._$AQ?.(e),n._$AM=e,n._$AP!==void 0&&(c=e._$AU)!==l._$AU&&n._$AP(c)}if(r!==i||d){let c=n._$AA;for(;c!==r;){let p=Pg(c).nextSibling;Pg(o).insertBefore(c,i),c=p}}}return n},eo=(e,t,n=e)=>(e._$AI(t,n),e),ax={},ba=(e,t=ax)=>e._$AH=t,Bg=e=>e._$AH,wa=e=>{e._$AR(),e._$AA.remove()};var M=$a(class extends $i{constructor(e){if(super(e),e.type!==vn.PROPERTY&&e.type!==vn.ATTRIBUTE&&e.type!==vn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!Mg(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===Ce||t===u)return t;let n=e.element,o=e.name;if(e.type===vn.PROPERTY){if(t===n[o])return Ce}else if(e.type===vn.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return Ce}else if(e.type===vn.ATTRIBUTE&&n.getAttribute(o)===t+"")return Ce;return ba(e),t}});var ze=e=>e.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function kn(e,t){let n=ze(t).split(/\s+/).filter(Boolean),o=i=>n.every(r=>ze(i).includes(r));return o(`${e.name} ${e.id.replaceAll("_"," ")}`)?e.name:"own"in e?void 0:[...e.also_called,e.inci].find(o)}function ya(e,t){let n=ze(e).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!t.some(r=>r.id===i))return i}}var ka=28.349523125,Ig=25.4,lx=29.5735295625;function tn(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function R(e,t){return ux(tn(e,t))}var ux=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function et(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${tn(e,t)} %`:Sd(e)?"just below 0 %":"0.0 %"}var Sd=e=>e<0||Object.is(e,-0),Wg=e=>Math.abs(e-Math.round(e))<1e-6;function Fg(e){return e?[0,1,2,3].find(t=>Wg(e*10**t))??3:0}function Cg(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function dx(e){return[0,1,2].find(t=>e.every(n=>Wg(n*10**t)))??3}function xa(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function he(e,t){let n=r=>e[`${t}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-dx([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var Eg=.001;function va(e,t,n,o,i=1e-9){let r=10**n;return tn(o==="nearest"?e/t:Math.floor((e+i)/t*r)/r,n)}var Lg=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function cx(e){if(!Lg.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return Lg.find(t=>Math.abs(t*ka-e)<.6*Eg)}function te(e,t,n="nearest"){let o=t.scale_step_g||.1,i=cx(o),r=Math.min(.6*Eg,o/2),l=i?va(t.g,1,Cg(o),n):va(t.g,1,Fg(o),n,r),d=i?va(t.g,ka,Fg(i),n,r):va(t.g,ka,Cg(o/ka),n),[c,p]=[`${t.g_text??l} g`,`${t.oz_text??d} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[p,c]:xa(e,c,p)}var j=(e,t,n=1,o="nearest")=>te(e,{g:t,scale_step_g:10**-n},o);function Oe(e,t,n=1){return xa(e,`${tn(t,n)} ml`,`${tn(t/lx,2)} US fl oz`)}function Ae(e,t){return xa(e,`${R(t,1)} mm`,px(t))}function px(e){let t=Math.round(Math.abs(e)/Ig*32),n=e<0&&t?"-":"",o=t%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(t/32),l=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",l].filter(Boolean).join(" ")} in`}var Dd=([e])=>e,O=([e,t])=>t?`${e} (${t})`:e;function Ng(e,t){return xa(e,`${tn(t,0)} \xB0C`,`${tn(t*1.8+32,0)} \xB0F`)}function Wt(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??Ig;return n*o}function yt(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var Je=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function oe(e){let t=new Date(/^\d{4}-\d\d-\d\d$/.test(e)?`${e}T12:00`:e);return Number.isNaN(t.getTime())?e:t.toLocaleDateString("en-GB",{dateStyle:"medium"})}function Re(e){return`${new Date(`${e}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${oe(e)}`}var jg=e=>new Date(`${e}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),vt=e=>e.replaceAll(/\d{4}-\d\d-\d\d/g,oe);function Ta(e){let t=Math.ceil(e),[n,o]=[Math.floor(t/60),t%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function to(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}function Ug(e){let t=Wt(e.round?.radius);if(t)return Hg(t,S`<circle class="plain" r=${t} />`);let n=mx(e);if(!n)return u;let o=Math.max(...n.map(([i,r])=>Math.hypot(i,r)));return o>0?Hg(o,S`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):u}var Hg=(e,t)=>s`<svg class="tip" viewBox="${-1.1*e} ${-1.1*e} ${2.2*e} ${2.2*e}" aria-hidden="true">
    ${t}
  </svg>`;function mx({star:e,outline:t}){if(e&&typeof e=="object"&&!Array.isArray(e))return fx(e);if(!Array.isArray(t))return;let n=t.map(o=>[qg(o,"x"),-qg(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function qg(e,t){let n=String(e[t]??"").trim();return(n.startsWith("-")?-1:1)*(Wt(n.replace(/^-/,""))??NaN)}function fx({points:e,outer_radius:t,inner_radius:n}){let[o,i]=[Wt(t),Wt(n)];if(!(!o||!i||typeof e!="number"||e<3||e>60))return Array.from({length:2*e},(r,l)=>{let d=Math.PI*l/e,c=l%2?i:o;return[c*Math.sin(d),-c*Math.cos(d)]})}var Ad=!1;function zg(e){let{plan:t,explanation:n}=a,o=n?.of!==t;return o&&!Ad&&gx(),{workings:hx(n?.workings,e),complaint:n?.complaint,is_old:o}}function hx(e,t){let n=e?.get(t);return n?[n]:[...e?.values()??[]].filter(({of:o})=>o.startsWith(`${t}.`))}async function gx(){let{plan:e,planned:t}=a;if(!(!e||!t)){Ad=!0;try{let{how:n}=await _m(t);f({explanation:{of:e,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof y))throw n;f({explanation:{of:e,workings:new Map,complaint:n.message}})}finally{Ad=!1}}}var Jg=S`<path class="wall" d="M30 10l8 52h44l8-52" />`,Pd={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:S`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${Jg}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:S`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:S`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${Jg}<path class="measure" d="M20 10h80" />`}};var Od=e=>`term ${e}`;function xn(e){return s`<button
    type="button"
    class="ask-term"
    aria-expanded=${a.open.has(Od(e))?"true":"false"}
    aria-label="What ${Pd[e].name} means"
    @click=${()=>Ue("open",Od(e))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function Et(e){if(!a.open.has(Od(e)))return u;let{name:t,words:n,drawing:o}=Pd[e];return s`<span class="term-words" role="note"
    >${o?s`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${t}</b>: ${n}</span
    ></span
  >`}var no=e=>s`<span class="term">${xn(e)}${Et(e)}</span>`;function F({key:e,label:t,shown:n,of:o,working:i,size:r="plain",note:l,term:d}){let c=a.open.has(e),p=`sum-${e.replaceAll(/[^\w]/g,"-")}`;return s`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Ue("open",e)}
    >
      <span class="name">${t}${l?s`<small>${l}</small>`:u}</span>
      <span class="value ${r==="weigh"?"large":""} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?s` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?s`${xn(d)}${Et(d)}`:u}
    ${c?s`<div class="sum" id=${p}>${i?Ra(i):Md(o)}</div>`:u}
  </div>`}var Io=(e,t,n)=>F({key:e,label:t,shown:["",""],of:n});function Md(e){let{workings:t,complaint:n,is_old:o}=zg(e);return t.length?s`<div class=${o?"old":""}>${t.map(Ra)}</div>`:o?s`<p class="old" role="status">Asking how it is calculated ...</p>`:s`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function Ra({formula:e,with:t,sum:n,rounded:o,comes_to:i,sources:r}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return s`<p class="formula">${e}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${t.map(({name:d,value:c,from:p})=>s`<tr>
              <th scope="row">${d}</th>
              <td>${c}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${l?s`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:u}
    ${r.length?s`<p class="sources">From: ${r.join("; ")}.</p>`:u}`}var Wo,Tr=[],Tn=()=>Wo!==void 0;function dt(e,t,n,o){if(!Wo||Wo.some(r=>r.id===n))return;let i=Tr.flatMap(({part:r})=>r??[]);Wo.push({of:e,at:t,id:n,label:o,part:i.at(-1)??"",folds:Tr.flatMap(({fold:r})=>r??[])})}function kt(e,t){Tr.push(e);try{return t()}finally{Tr.pop()}}var Kg=()=>{},Vg=e=>{Kg=e},Sa,_x=()=>[a.run.now,...Object.values(a.formulas).map(e=>e.now),...Object.values(a.beside).map(e=>e.now),a.formulas.apart,a.plan,a.fats,a.files];function wi(){if(Tn())return[];let e=_x();return Sa?.of.length===e.length&&e.every((n,o)=>n===Sa.of[o])||(Sa={of:e,wanted:$x()}),Sa.wanted}function $x(){Wo=[],Tr=[];try{return Kg(),Wo}finally{Wo=void 0}}function Qg(e){a.touched.has(e)||f({touched:new Set(a.touched).add(e)})}function Gg(e,t){if(a.has_asked)return!1;let n=wi().filter(o=>o.of===e&&(o.at===t||o.at.startsWith(`${t}/`)));return n.length>0&&n.every(o=>!a.touched.has(o.id))}var J=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function Da(e){if(e==="order")return a.order?.quoted?.complaint??a.order?.days?.complaint;let t=(n,o)=>o===a.plan?n?.complaint:void 0;return a.complaint??t(a.quoted,a.quoted?.of)??t(a.run_days,a.run_days?.of[0])}function Ne(e,t){let n=Da(e);if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return xt(e)&&!Gg(e,n.field)?H(n):void 0}function ke(e,t){return Da(e)?.field===t?Ne(e,t):void 0}function xt(e){let t=Da(e),n=zn(e)?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function bx(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(g(e,n)??{}).length>1?t:n}function nn(){let e=Da();if(e)for(let t of["run",...me,...ye])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Ne(t,n)&&document.getElementById(J(t,n));if(o)return o}}function wx(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=yx(e,n);return o&&Je(t)?`${t.trim()} ${o}`:t}function yx(e,t){return yt(g(t,e.at))||e.unit||""}var ge=(e,t,n)=>t||n?s`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:u,Bd=!1;addEventListener("pointerdown",()=>Bd=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>Bd=!1,!0);var vx=()=>f({typed:void 0});function Eo(e){let{id:t}=e.target,n=()=>{vx(),Qg(t)};Bd?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var kx=e=>typeof e=="string"&&e.startsWith("?")?e.slice(1).trim():void 0,xx=({unit:e="",told:t=""},n)=>[e.replace("cm2","cm\xB2"),t,n?"required":""].filter(Boolean).join(", ")||u;function h(e){let t=e.of??"run",n=J(t,e.at),o=g(t,e.at),i=kx(o),r=a.typed?.key===n,l=r?a.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||l.trim()===""&&(!e.optional||e.is_due===!0);d&&dt(t,e.at,n,e.label);let c=Ne(t,e.at),p=b=>{let w=b.target.value;f({typed:{key:n,text:w}});let x=wx(e,w);Z(t,x===void 0&&e.takes_part?bx(t,e.at):e.at,x)},_=(r&&typeof o=="string"&&o!==l?`taken as ${o}`:"")||e.hint||i;return s`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${c?"wants":""}"
  >
    ${Fd(s`<label for=${n} data-said=${xx(e,d)}>${e.label}</label>`,e.term)}
    <input
      id=${n}
      type=${e.date?"date":"text"}
      aria-required=${e.optional&&!e.is_due?u:"true"}
      .value=${M(l)}
      @input=${p}
      @blur=${Eo}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.date?u:e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${ge(n,c,_)} ${e.term?Et(e.term):u}
  </div>`}var Fd=(e,t)=>t?s`<div class="labelled">${e}${xn(t)}</div>`:e;function Ke(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var L=e=>()=>document.getElementById(e),ne=(e,t)=>L(J(e,t)),Nt=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),Tx=()=>document.activeElement;function z(e){requestAnimationFrame(()=>Ke(e()))}function ct(e,t,n,o=Tx){B(t),$h(e,n),z(o)}function E(e,t,n,o,i){ct(e,t,r=>P(r,n,o),i)}var Tt=(e,t,n)=>`${J(e,t)}-${n}`;function I(e,t){let n=ke(e,t);return n?s`<p id=${J(e,t)} class="complaint" tabindex="-1">${n}</p>`:u}var Yg=(e,t,n)=>t.map(([o,i])=>s`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function ue(e,t,n,o){return s`<div class="choice" role="group" aria-label=${e}>${Yg(t,n,o)}</div>`}function T({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:l,puts:d,then:c,hint:p,optional:m,term:_}){let b=i?Tt(e,n,t.replaceAll(/\W+/g,"-")):J(e,o),w=r===void 0&&!m;w&&dt(e,o,b,t);let x=i?void 0:ke(e,o),K=Be=>{if(Be===r)return;let go=l.find(([dv])=>dv===Be)[1];E(e,`${t}: ${go}`,n,d(Be),c&&ne(e,c(Be)))};return s`<div class="field asked ${x?"wants":""}">
    ${Fd(s`<p class="question" id="${b}-label" data-said=${w?"required":u}>${t}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${b}
      tabindex="-1"
      aria-labelledby="${b}-label"
      aria-describedby=${x||p?`${b}-said`:u}
    >
      ${Yg(r,l,K)}
    </div>
    ${ge(b,x,p)} ${_?Et(_):u}
  </div>`}function Cd(e,t,n,o){let i=J("run",e),r=ke("run",e),l=()=>E("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return s`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${r?`${i}-said`:u}
        @click=${l}
      >
        ${t}
      </button>
    </div>
    ${ge(i,r)}`}function $e({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:r,chosen:l,take:d}){let c=J(t,n),p=Ne(t,n),m=l??D(t,n);!m&&!r&&dt(t,n,c,e);let _=!m||o.some(([x])=>x===m),b=[["",i],..._?[]:[[m,m]],...o];return s`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||r?u:"required"}>${e}</label>
    <select
      id=${c}
      aria-required=${r?u:"true"}
      @change=${x=>{let K=x.target.value;d?d(K):Z(t,n,K||!r?K:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${b.filter(([x])=>x||r||!m).map(([x,K])=>s`<option value=${x} .selected=${M(x===m)}>${K}</option>`)}</select
    >${ge(c,p)}
  </div>`}function yi(e,t,n=[]){let o=Ze(D("run",t),n);return $e({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Ve({of:e="run",at:t,name:n,title:o,add:i,blank:r,body:l}){let d=Tt(e,t,"part"),c=Tt(e,t,"add"),p=()=>kt({part:o},l);return g(e,t)===void 0?s`<p class="choice">
      <button type="button" id=${c} @click=${()=>E(e,`${o} added`,t,r,Nt(d))}>
        ${i}
      </button>
    </p>`:s`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>E(e,`${o} removed`,t,void 0,L(c))}
      >
        Remove
      </button>
    </div>
    ${I(e,t)} ${p()}
  </div>`}var Zg=(e,t)=>`folded ${e} ${t}`,je=(e,t)=>le(Zg(e,t));function A({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:r}){let l=Zg(e,t);if(Tn())return s`${kt({fold:l},r)}`;(i||n.some(p=>Ne(e,p)))&&le(l);let d=a.open.has(l);return s`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),Ue("open",l)}}>${o}</summary>
    ${d?s`<div class="folded">${r()}</div>`:u}
  </details>`}var k=({of:e="run",at:t})=>X(e,t),C=({of:e="run",at:t},n)=>Tt(e,`${t}/${n}`,"item"),Aa=({of:e="run",at:t},n,o)=>Tt(e,`${t}/${n}`,o),Rx=({of:e="run",at:t})=>J(e,t);function Rr(e,t,n,o){let{of:i="run",at:r,stays:l,and:d=c=>c}=e;ct(i,t,c=>d(P(c,r,n.length||l?n:void 0),n.length),o)}function N(e,t,n){let o=k(e);Rr(e,`${n} added`,[...o,t],Nt(C(e,o.length)))}function Sx(e,t,n){let o=k(e).filter((l,d)=>d!==t),i=Math.min(t,o.length-1),r=o.length>(e.least??0);Rr(e,`${n} removed`,o,r?L(Aa(e,i,"drop")):ne(e.of??"run",e.at))}function Dx(e,t,n,o){let i=[...k(e)],[r]=i.splice(t,1);i.splice(t+n,0,r);let l=n<0?"earlier":"later",c=t+n===0||t+n===i.length-1?n<0?"later":"earlier":l;Rr(e,`${o} moved ${l}`,i,L(Aa(e,t+n,c)))}function U(e,t,n){let o=k(e).length-1,i=o>=(e.least??0),r=e.in_order&&o>0;if(!i&&!r)return u;let l=(d,c,p)=>s`<button
      type="button"
      id=${Aa(e,t,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>Dx(e,t,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return s`<div class="tools">
    ${r?s`${l(-1,"earlier",t===0)} ${l(1,"later",t===o)}`:u}
    ${i?s`<button
            type="button"
            id=${Aa(e,t,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>Sx(e,t,n)}
          >
            ×
          </button>`:u}
  </div>`}function G(e,t,n){let o=Rx(e),i=ke(e.of??"run",e.at);return s`${ge(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${t}
    </button>`}var se=()=>a.beside.studio!==void 0,Sr=({run:e})=>g("run",e),Ld=({studio:e})=>g("studio",e);function Dr(e){return Sr(e)===void 0&&se()?{of:"studio",at:e.studio}:{of:"run",at:e.run}}var on=e=>Sr(e)??Ld(e),Me=(e,t)=>h({...t,...Dr(e)}),Id=e=>e===void 0||e===""||e!==null&&typeof e=="object"&&!Object.keys(e).length;function Ar(e,t=""){return e===void 0||Id(e)?[]:e===null||typeof e!="object"||Array.isArray(e)?[[t,e]]:Object.entries(e).flatMap(([n,o])=>Ar(o,`${t}/${W(n)}`))}function Rn(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/")))$(e,n)!==void 0&&Id($(e,n))&&(e=P(e,n,void 0));return e}var vi=(e,t)=>t.reduce((n,o)=>Rn(P(n,o,void 0),o),e);function e_(e){let t=new Map;return e.flatMap(n=>Ar(Sr(n)).flatMap(([o,i])=>{let r=n.studio+o,l=t.get(r)??g("studio",r);return Id(l)||String(l).startsWith("?")||l===i?(t.set(r,i),[[n.run+o,r,i]]):[]}))}async function Wd(e){se()||await Vs();let t=e_(e);Lt([["studio",n=>t.reduce((o,[,i,r])=>P(o,i,r),n)],["run",n=>vi(n,t.map(([o])=>o))]]),B("Kept in the studio")}function Ax(e){let t=e.flatMap(o=>Ar(Ld(o)).map(([i,r])=>[o.run+i,r]));Lt([["run",o=>t.reduce((i,[r,l])=>$(i,r)===void 0?P(i,r,l):i,o)]]),B("Said in this run only")}function Px(e){let t=e.flatMap(n=>Ar(Sr(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Lt([["run",n=>vi(n,t)]]),B("Taken from the studio again")}var Xg=e=>Ar(e).length>0;function oo(e,t){if(!se())return u;let n=t.some(r=>Xg(Sr(r))),o=t.some(r=>Xg(Ld(r))),i=(r,l)=>s`<button type="button" aria-label="${e}: ${r}" @click=${l}>${r}</button>`;return s`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&e_(t).length?i("Keep in my studio",()=>{Wd(t)}):u}
    ${n&&o?i("As in the studio",()=>Px(t)):u}
    ${!n&&o?i("Otherwise in this run",()=>Ax(t)):u}
  </span>`}function Ed(e){let t=Object.keys(g("studio","/moulds_owned")??{}),n=a.files?.moulds;return t.find(o=>Ze(o,n)===Ze(e,n))??e}var pe=(e,t)=>Object.keys(g(e,t)??{}),t_=(e,t)=>`${J(e,t)}-name`;function ki({of:e,at:t,label:n,add:o,blank:i,then:r}){let l=t_(e,t),d=()=>{let c=document.getElementById(l),p=c.value.trim();if(!p)return c.focus();if(c.value="",pe(e,t).includes(p))return Ke(r(p)());E(e,`${p} added`,`${t}/${W(p)}`,i,r(p))};return s`<div class="row">
    <div class="field">
      <label for=${l}>${n}</label>
      <input
        id=${l}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&d()}}
      />
    </div>
    <button type="button" @click=${d}>${o}</button>
  </div>`}function Pr({of:e,at:t,name:n,label:o,also:i=l=>l,put:r}){let l=`${J(e,t)}-${pe(e,t).indexOf(n)}-called`;return jd({id:l,name:n,label:o,taken:pe(e,t),take:d=>{let c=p=>i(Or(p,t,n,d),d);r?r(c,d):ct(e,`${n} is called ${d}`,c)}})}var Nd;function jd({id:e,name:t,label:n,taken:o,take:i,hint:r}){let l=c=>{let p=c.target.value.trim(),m=p!==t&&o.includes(p);Nd=m?{id:e,words:`Another is called ${p} already`}:void 0,f({typed:void 0}),!(!p||m||p===t)&&(i(p),B(`${t} is called ${p}`),z(L(e)))},d=Nd?.id===e?Nd.words:void 0;return s`<div class="field ${d?"wants":""}">
    <label for=${e}>${n}</label>
    <input
      id=${e}
      .value=${M(a.typed?.key===e?a.typed.text:t)}
      @input=${c=>f({typed:{key:e,text:c.target.value}})}
      @change=${l}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${d?"true":"false"}
      aria-describedby=${d||r?`${e}-said`:u}
    />
    ${ge(e,d,r)}
  </div>`}function Or(e,t,n,o){let i=Object.entries($(e,t)??{}).map(([r,l])=>[r===n?o:r,l]);return P(e,t,Object.fromEntries(i))}function No(e,t,n,o=n){let i=r=>Rn(P(r,`${t}/${W(n)}`,void 0),t);return s`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>ct(e,`${o} removed`,i,L(t_(e,t)))}
    >
      ×
    </button>
  </div>`}var jo="/pipe/beads",Ht=`${jo}/tip`,Ox={of:"run",at:Ht},rn={at:`${jo}/moves`,in_order:!0},Hd="\0own",r_={tip:"",bead_to_opening:"",moves:[]},jt=(e,t)=>({name:e,label:t,kind:"length"}),n_={name:"count",label:"How many",kind:"count"},o_=jt("circle_radius","Radius of their circle"),qd={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[jt("diameter","Diameter"),jt("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[jt("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},jt("start_radius","Radius at the start"),jt("end_radius","Radius at the end"),jt("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[jt("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[n_,o_,jt("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[n_,o_,jt("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[jt("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function s_(e){return s`${Bx()} ${Ud()?Oa(Ox):Wx()}
    ${h({label:"Bead \xF7 tip opening",at:`${jo}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${k(rn).map((t,n)=>zx(t,n,e))}</div>
    ${Vx()}`}var Ud=()=>typeof g("run",Ht)=="object",zd=()=>String(g("run",`${jo}/own_tips`)??g("studio","/own_tips")??"");function Mx(){let e=zd(),t=e?_d(e):[];return g("run",`${jo}/own_tips`)===void 0?[...t,...wr()]:t}function Bx(){let e=n=>n===Hd?E("run","a tip of your own",Ht,{name:"",round:{radius:""}},Cx):Z("run",Ht,n),t=Mx().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return s`${$e({label:"Tip",at:Ht,answers:[...t,[Hd,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:Ud()?Hd:void 0})}
  ${Ud()?u:A({name:"tips",pointers:[`${jo}/own_tips`],summary:"Tips of a file of your own",body:()=>h({label:"File of tips",at:`${jo}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var Fx=Tt("run",Ht,"own"),Cx=Nt(Fx);async function Lx(){let e=g("run",Ht);if(!await Qu())return;let t=X("own_tips","/tips"),n=Ix(String(e.name).trim()||"My tip",t);Lt([["own_tips",o=>P(o,`/tips/${t.length}`,{...e,name:n})],["run",o=>P(o,Ht,n)]]),B(`${n} kept in ${a.beside.own_tips.file}`)}function Ix(e,t){for(let n=1;;++n){let o=n===1?e:`${e} ${n}`;if(![...t,...wr()].some(i=>i.name===o))return o}}function Wx(){let e=D("run",Ht),t=zd();if(!e||!t||!_d(t).some(o=>o.name===e))return u;let n=X("own_tips","/tips").findIndex(o=>o.name===e);return n<0?s`<button type="button" @click=${()=>{Qu()}}>Change this tip of my own</button>`:Oa({of:"own_tips",at:`/tips/${n}`})}var i_=[["round","Round"],["star","Star"],["outline","Another outline"]],Pa={x:"",y:""},Ex={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Pa,Pa,Pa]};function Oa({of:e,at:t}){let n=i_.map(([r])=>r),o=n.find(r=>g(e,`${t}/${r}`)!==void 0),i=r=>({...fe(e,t,n),[r]:Ex[r]});return s`<div class="part" id=${Tt(e,t,"own")} role="group" aria-label="My own tip">
    ${I(e,t)} ${Nx({of:e,at:t})}
    ${T({of:e,question:"Opening of the tip",at:t,is_told_elsewhere:!0,chosen:o,answers:i_,puts:i})}
    ${o?qx({of:e,at:t},o):u}
    ${A({of:e,name:e==="run"?"hand":`hand ${t}`,pointers:[`${t}/hand`,`${t}/note`],summary:"Correction for your hand",body:()=>Hx({of:e,at:t})})}
    ${e==="run"?s`<button type="button" @click=${()=>{Lx()}}>Keep this tip for all my runs</button>`:s`<p class="hint">It stands in ${a.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var Nx=({of:e,at:t})=>e==="run"?h({label:"What you call the tip",at:`${t}/name`}):jd({id:J(e,`${t}/name`),name:D(e,`${t}/name`),label:"What you call the tip",taken:X("own_tips","/tips").map(({name:n})=>String(n)),take:n=>jx(t,n),hint:"The run that lies open and the studio follow; other runs that name it choose it anew."});function jx(e,t){let n=D("own_tips",`${e}/name`),o="/hand",i=Ct(zd())===a.beside.own_tips?.file,r=i&&g("run",Ht)===n,l=i&&g("studio",`${o}/${W(n)}`)!==void 0;Lt([["own_tips",d=>P(d,`${e}/name`,t)],...r?[["run",d=>P(d,Ht,t)]]:[],...l?[["studio",d=>Or(d,o,n,t)]]:[]])}function Hx({of:e,at:t}){let n=`${t}/hand`,o=i=>g(e,i)!==void 0;return s`<div class="row">
      ${h({of:e,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?h({of:e,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?s`<button
            type="button"
            @click=${()=>E(e,"correction removed",n,void 0,Nt(Tt(e,t,"own")))}
          >
            Leave the correction out
          </button>`:u}
    ${h({of:e,label:"Note on the tip",at:`${t}/note`,optional:!0})}`}function qx(e,t){if(t==="outline")return Ux(e);let{of:n,at:o}=e,i=(r,l)=>h({of:n,label:l,at:`${o}/${t}/${r}`,unit:"mm",short:!0});return s`<div class="row">
    ${t==="round"?i("radius","Radius of the opening"):s`${h({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function Ux({of:e,at:t}){let n={of:e,at:`${t}/outline`};return s`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${k(n).map((o,i)=>s`<div class="row" id=${C(n,i)}>
          ${h({of:e,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${h({of:e,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${U(n,i,`corner ${i+1}`)}
        </div>`)}
    ${G(n,"One more corner",()=>N(n,Pa,"corner"))}`}function zx(e,t,n){let o=qd[String(e.move)],i=`${rn.at}/${t}`,r=`${t+1}. ${o?.words??String(e.move)}`;return s`<div class="part" id=${C(rn,t)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${U(rn,t,r)}
    </div>
    ${I("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>Jx(i,l))}
      ${h({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${Kx(t,n)}
  </div>`}function Jx(e,{name:t,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return h({label:n,at:`${e}/${t}`,unit:l,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function Kx(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==k(rn).length)return u;let i=o.length_mm>0?`${R(o.length_mm/10,1)} cm of bead`:"";return F({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:Oe(a.units,o.volume_ml),of:`pipe.visible_by.moves.${e}.volume_ml`})}function Vx(){let e=o=>({move:o,...Object.fromEntries(qd[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=J("run",rn.at),n=ke("run",rn.at);return k(rn).length||dt("run",rn.at,t,"What the tip does"),s`${ge(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:u}
    >
      ${Object.entries(qd).map(([o,{words:i,does:r}])=>s`<button type="button" @click=${()=>N(rn,e(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function sn(e,t=()=>{}){if(!e.theirs)return u;let n=Do(e),o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{Cf(e),t()};return s`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${e.failed?s`<p class="complaint" role="status">Not loaded: ${e.failed}.</p>`:u}
    <div class="choice">
      ${n?s`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>Lf(e)}>Leave it deleted</button>`:s`<button type="button" @click=${()=>Ff(e)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function an(e){if(e.theirs||!e.set_aside||si(e)&&!e.is_taken)return u;let t=()=>{si(e)&&Bo(),If(e)};return s`<section class="banner quiet" aria-label="${e.file} was changed">
    <p>
      ${e.file} was changed outside this page, and stands here as it is
      now.${e.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${t}>Change to the other text</button>
      ${e.is_taken?s`<button type="button" @click=${()=>Mf(e)}>Close</button>`:u}
    </div>
  </section>`}var Ma={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function l_(e,t){let n=$r(e);if(!Array.isArray(n)||!n.some(d=>d.id===t))return u;let i=X("own_fats","/fats").findIndex(d=>d.id===t);if(!(i>=0&&a.beside.own_fats!==void 0))return s`<button type="button" @click=${()=>{Qx(e,t)}}>Change this fat of my own</button>`;let l=`/fats/${i}`;return A({of:"own_fats",name:t,pointers:[l],summary:`My own fat, in ${a.beside.own_fats.file}`,body:()=>kt({part:D("own_fats",`${l}/name`)||"Your own fat"},()=>Jd(l))})}async function Qx(e,t){await Qs(e),je("own_fats",t);let n=X("own_fats","/fats").findIndex(o=>o.id===t);z(L(`f-own_fats-fats-${n}-name`))}var Gx=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function Jd(e){let t=(n,o,i,r=!1)=>h({of:"own_fats",label:o,at:`${e}/${n}`,hint:i,optional:r});return s`${I("own_fats",e)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${t("name","Name of the fat")} ${t("source","The document","Supplier, name, date.")}
      ${t("lot","Lot",void 0,!0)}
    </div>
    ${T({of:"own_fats",question:"What it is",at:`${e}/kind`,chosen:D("own_fats",`${e}/kind`)||void 0,answers:Gx,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${Yx(`${e}/saponification_value`)}
    <div class="row">
      ${t("inci","INCI name")}
      ${t("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${t("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${A({of:"own_fats",name:`${e} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${e}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>Zx(e)})}`}function Yx(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"?"range":"one",o=(i,r,l=!1)=>h({of:"own_fats",label:r,at:i,number:!0,short:!0,optional:l,unit:"mg KOH/g"});return s`${T({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:e,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(e,"Saponification value"):s`${o(`${e}/low`,"Lowest")} ${o(`${e}/typical`,"Typical",!0)}
            ${o(`${e}/high`,"Highest")}`}
    </div>`}function Zx(e){let t=(o,i,r,l)=>{let d=`${e}/${o}`,c=g("own_fats",d)!==void 0,p=()=>E("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:r);return s`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?s`${I("own_fats",d)}${l()}`:u}
    </div>`},n=(o,i,r,l=!1)=>h({of:"own_fats",label:i,at:`${e}/${o}`,unit:r,number:l,short:!0});return s`<div class="items">
      ${t("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${e}/iodine_value`)=="object"?s`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${t("density","Density when molten",{at:"",low:"",high:""},()=>s`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${t("melting_range","Melting range",{low:"",high:""},()=>s`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${Xx(`${e}/fatty_acids`)}
    <div class="row">
      ${h({of:"own_fats",label:"Unsaponifiable, at most",at:`${e}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${h({of:"own_fats",label:"Note on the fat",at:`${e}/note`,optional:!0})}
    </div>`}var a_=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function Xx(e){let t=Object.keys(g("own_fats",e)??{}),n=a_.filter(([l])=>!t.includes(l)),o=l=>a_.find(([d])=>d===l)?.[1]??l,i=l=>`${e}/${W(l)}`,r=l=>{let d=Array.isArray(g("own_fats",i(l))),c=(p,m)=>h({of:"own_fats",label:`${o(l)}, ${m}`,at:`${i(l)}/${p}`,unit:"%",short:!0});return s`<div class="row">
      ${d?s`${c(0,"lowest")} ${c(1,"highest")}`:h({of:"own_fats",label:o(l),at:i(l),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(l)}"
        @click=${()=>E("own_fats",`${o(l)} removed`,t.length>1?i(l):e,void 0)}
      >
        ×
      </button>
    </div>`};return s`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${I("own_fats",e)} ${t.map(r)}
    <div class="row">
      ${$e({label:"Add a fatty acid",of:"own_fats",at:`${e}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:l=>l&&E("own_fats",`${o(l)} added`,i(l),["",""])})}
    </div>`}function xi(e){let{pieces:t,batches:n,batch_limits:o,around:i,...r}=e,[l]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=l;return{...r,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:l,place:"batches.0",whippings:c?.whippings??[],whole:e}}var V=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,eT=e=>e.cut?["loaf","loaves"]:["cast","casts"];function qt(e,{pieces:t,casts:n}){let o=e.cut?V(t,"bar"):V(t,"piece");return n===t?o:`${o} from ${V(n,...eT(e))}`}var tT=e=>e===1?"once":`${e} times`,Kd=e=>e.batches.length>1,He=e=>e.pieces.batches>1;function _e(e){return He(e.whole)?`one batch, ${qt(e.whole,e.batch)}`:""}var u_=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function Vd(e,t){return u_(e)?`${qt(e.whole,t)}${t.count>1?`, whipped ${tT(t.count)}`:""}`:""}function Ba(e,t){let n=Vd(e,t);return n&&`one whipping: ${n}`}var d_=e=>He(e.whole)||u_(e),Fa=(e,t)=>`${V(e,"filling")} of ${V(t,"cavity","cavities")}`;var c_=e=>[...a.files?.runs??[],...a.files?.orders??[],...a.files?.formulas??[]].find(t=>t.file===e)?.name||e;function Ca(e){let t=e?.used_by??[];return t.length?s`<p class="aside">Used by ${Ie(t.map(c_))}.</p>`:u}function Ti(e){let t=e?.used_by??[];return t.length<2?u:s`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${Ie(t.map(c_))}: a change here changes
    ${t.length===2?"both":`all ${t.length}`}.
  </p>`}var Mr={of:"own_fats",at:"/fats",least:1},La={of:"own_tips",at:"/tips",least:1},Ho=({of:e,at:t})=>X(e,t);function p_(e){return f_(e,Mr,"fats",t=>{let n=`/fats/${t}`;return A({of:"own_fats",name:String(Ho(Mr)[t].id),pointers:[n],summary:s`<span
        >${D("own_fats",`${n}/name`)||"Without a name"}<small
          >${nT(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>Jd(n)})})}function nT(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(t??"");return o?`${o} mg KOH/g`:"saponification value not given"}function m_(e){return f_(e,La,"tips",t=>{let n=`/tips/${t}`;return s`<div class="tip-row">
      ${Ug(Ho(La)[t])}
      ${A({of:"own_tips",name:`tip ${t}`,pointers:[n],summary:D("own_tips",`${n}/name`)||"Without a name",body:()=>Oa({of:"own_tips",at:n})})}
    </div>`})}function f_(e,t,n,o){let i=a.files?.[n].find(({file:l})=>l===e.file),r=l=>String(Ho(t)[l].name||`number ${l+1}`);return s`${sn(e)} ${an(e)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${e.file}</h2>
      ${Ti(i)}
      ${e.shipped?s`<p class="aside">Built-in: your first change is saved as a copy.</p>`:u}
      <div class="items">
        ${Ho(t).map((l,d)=>s`<div class="held" id=${C(t,d)} role="group" aria-label=${r(d)}>
              ${o(d)} ${U(t,d,r(d))}
            </div>`)}
      </div>
    </section>`}var Qd=(e,t)=>({...Ma,id:ya(e,t),name:e});function h_(e){let t=Qd(e,[...a.fats,...Ho(Mr)]);N(Mr,t,e),je("own_fats",String(t.id)),z(ne("own_fats",`/fats/${Ho(Mr).length-1}/source`))}var Gd=e=>({name:e});function g_(e){N(La,Gd(e),e);let t=Ho(La).length-1;je("own_tips",`tip ${t}`),z(Nt(Tt("own_tips",`/tips/${t}`,"own")))}var __=(e,t,n)=>{let o=new Map;for(let i=t;i<=n;i++)o.set(e[i],i);return o},Ia=$a(class extends $i{constructor(e){if(super(e),e.type!==vn.CHILD)throw Error("repeat() can only be used in text expressions")}dt(e,t,n){let o;n===void 0?n=t:t!==void 0&&(o=t);let i=[],r=[],l=0;for(let d of e)i[l]=o?o(d,l):l,r[l]=n(d,l),l++;return{values:r,keys:i}}render(e,t,n){return this.dt(e,t,n).values}update(e,[t,n,o]){let i=Bg(e),{values:r,keys:l}=this.dt(t,n,o);if(!Array.isArray(i))return this.ut=l,r;let d=this.ut??=[],c=[],p,m,_=0,b=i.length-1,w=0,x=r.length-1;for(;_<=b&&w<=x;)if(i[_]===null)_++;else if(i[b]===null)b--;else if(d[_]===l[w])c[w]=eo(i[_],r[w]),_++,w++;else if(d[b]===l[x])c[x]=eo(i[b],r[x]),b--,x--;else if(d[_]===l[x])c[x]=eo(i[_],r[x]),bi(e,c[x+1],i[_]),_++,x--;else if(d[b]===l[w])c[w]=eo(i[b],r[w]),bi(e,i[_],i[b]),b--,w++;else if(p===void 0&&(p=__(l,w,x),m=__(d,_,b)),p.has(d[_]))if(p.has(d[b])){let K=m.get(l[w]),Be=K!==void 0?i[K]:null;if(Be===null){let go=bi(e,i[_]);eo(go,r[w]),c[w]=go}else c[w]=eo(Be,r[w]),bi(e,i[_],Be),i[K]=null;w++}else wa(i[b]),b--;else wa(i[_]),_++;for(;w<=x;){let K=bi(e,c[x+1]);eo(K,r[w]),c[w++]=K}for(;_<=b;){let K=i[_++];K!==null&&wa(K)}return this.ut=l,ba(e,c),Ce}});async function de(e){f({list_complaint:""});try{await e()}catch(t){f({list_complaint:t instanceof Error?t.message:String(t)}),t instanceof y&&await wt().catch(()=>{})}}var Yd=()=>{de(vh)},$_=()=>{de(kh)};function Rt(e){return s`<h1 tabindex="-1">${e}</h1>
    ${a.list_complaint?s`<p class="alarm" role="alert">${a.list_complaint}</p>`:u}
    ${a.list_told&&cr()?s`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${Yd}>Undo</button>
          </p>`:u}
    ${(a.files?.cut??[]).map(t=>s`<p class="alarm">
          More lies in ${t.folder} than is looked at: ${t.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var b_=new Map,w_=Promise.resolve();function y_(e,t=""){let n=`${e}
${t}`,o=b_.get(n);return o||(o=w_.then(()=>oT(e)),w_=o,b_.set(n,o)),o}async function oT(e){try{let t=await Vt({kind:"glb",gauge:{file:e}}),n=ci(await t.arrayBuffer());return mr(n.find(o=>o.name==="cavity")??n[0])}catch(t){if(t instanceof y)return;throw t}}var Zd=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#e=new IntersectionObserver(([t])=>t.isIntersecting&&this.#t(),{rootMargin:"200px"});connectedCallback(){this.#e.observe(this)}disconnectedCallback(){this.#e.disconnect()}attributeChangedCallback(){this.#e.disconnect(),this.isConnected&&this.#e.observe(this)}#t(){this.#e.disconnect();let t=this.getAttribute("file")??"";requestIdleCallback(()=>{y_(t,this.getAttribute("changed")??"").then(n=>{t===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let t=this.#n;if(!t)return void _t(u,this);let{left:n,right:o,floor:i,brim:r,loops:l}=t,d=.04*Math.max(o-n,r-i),c=[n-d,-r-d,o-n+2*d,r-i+2*d];_t(s`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${pr(l)} />
      </svg>`,this)}};customElements.define("mould-picture",Zd);var Ut=(e,t)=>s`<ul class="cards">
    ${Ia(e,({file:n})=>n,t)}
  </ul>`;function ln(e){let{one:t,facts:n,picture:o,open:i}=e,r=a.list_open?.file===t.file?a.list_open:void 0,l=t.name||t.file;return s`<li class="file">
    <button type="button" class="open" @click=${()=>{de(i)}}>
      ${o?s`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${l}</b>${n.length?s`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${t.shipped?"built-in":t.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${r?"true":"false"}
      aria-label="Name, note, copy or remove: ${l}"
      @click=${()=>iT(e,!r)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${r?rT(e,r):u}
  </li>`}function iT({one:e},t){let{file:n,name:o,note:i}=e;f({list_open:t?{file:n,name:o,note:i,stem:di(n)}:void 0})}function rT(e,t){let{kind:n,one:o}=e,i=s`<button type="button" @click=${()=>{de(()=>aT(n,o))}}>Copy</button>`;if(o.shipped)return s`<div class="acts"><div class="choice">${i}</div></div>`;let r=["name","note"].every(c=>o[c]===t[c])&&di(o.file)===t.stem,l=n.name==="fats"||n.name==="tips"||t.name.trim()!=="",d=()=>{de(()=>lT(e,t))};return s`<div class="acts">
    ${Ca(o)} ${n.called?Xd(n.called==="for"?"For":"Name",t,"name"):u}
    ${n.name==="tips"?u:Xd("Note",t,"note")} ${Xd("Name of the file",t,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${r||!l||!t.stem.trim()} @click=${d}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{de(()=>v_(o,t,!1))}}>Remove</button>
    </div>
    ${t.used_by?sT(o,t):u}
  </div>`}function Xd(e,t,n){let o=`list-${n}`,i=r=>v(t,{[n]:r.target.value});return s`<div class="field">
    <label for=${o}>${e}</label>
    <input id=${o} .value=${M(t[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function sT(e,t){return s`<div role="alert">
    <p class="alarm">${t.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{de(()=>v_(e,t,!0))}}>Remove it even so</button>
  </div>`}async function aT(e,t){let n=await xh(e,t),o=a.files?.[e.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:di(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function lT({kind:e,one:t},{name:n,note:o,stem:i}){await Rh(e,t,{name:n.trim(),note:o.trim(),stem:i.trim()}),f({list_open:void 0})}async function v_(e,t,n){let o=e.used_by??[];if(o.length&&!n)return v(t,{used_by:o});try{await Sh(e,n),f({list_open:void 0})}catch(i){let r=i instanceof y?i.answer.used_by:void 0;if(!r)throw i;v(t,{used_by:r})}}function Wa(e,t,n){let o=[...a.files?.[e.list]??[]].sort((r,l)=>Number(r.shipped)-Number(l.shipped));return o.length?Ut(o,r=>ln({kind:e,one:r,facts:uT(r),open:()=>n(r.file)})):s`<p class="aside">None yet. ${t}</p>`}var k_=4;function uT({holds:e=[],changed:t}){let n=e.length-k_,o=n>0?[...e.slice(0,k_),`${n} more`]:e;return[o.length?Ie(o):"",t?`changed ${oe(t)}`:""].filter(Boolean)}var Br="";function Ea({label:e,add:t,act:n,tried:o}){let i=()=>{o(async()=>{await n(Br.trim()),Br="",Q()})},r=l=>{Br=l.target.value,Q()};return s`<div class="row">
    <div class="field">
      <label for="new-held">${e}, by name</label>
      <input id="new-held" .value=${M(Br)} @input=${r} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!Br.trim()} @click=${i}>${t}</button>
  </div>`}function St(e){let t=a.removed.filter(n=>n.kind===e);return t.length?s`<details class="removed">
    <summary>Removed, and kept still: ${t.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${t.map(dT)}
    </ul>
  </details>`:u}function dT(e){let t=e.name||e.file,n=`removed ${e.removed}`,o=a.open.has(n);return s`<li>
    <p>
      <b>${t}</b> <small>${e.file}, removed ${oe(e.removed_at)}, kept until ${oe(e.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${t}" @click=${()=>{de(()=>Dh(e))}}>
        Bring back
      </button>
      ${o?s`<button
                type="button"
                aria-label="Delete ${t} for good"
                @click=${()=>{de(()=>Ah(e))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>Ue("open",n)}>Keep it</button>`:s`<button type="button" aria-label="Delete ${t} ..." @click=${()=>Ue("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function T_(){let e=Kn();return s`${Rt("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${Wa(Gt,"Each file is named by the formulas that use its fats.",t=>dr(Gt,t))}
      ${e?p_(e):u}
      ${Ea({label:"A new fat of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(h_(t)):Gs(Gt,Qd(t,a.fats)),tried:de})}
    </section>
    ${cT()} ${St("fats")}`}var x_="fats that are listed";function cT(){let e=a.finding?.key===x_?a.finding.text:"",t=a.fats.filter(n=>kn(n,e)!==void 0);return s`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${M(e)}
          @input=${n=>f({finding:{key:x_,text:n.target.value}})}
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
          ${t.map(n=>pT(n,e))}
        </tbody>
      </table>
    </div>
    ${t.length?u:s`<p class="hint">None is called so.</p>`}
  </section>`}function pT(e,t){let{low:n,high:o,typical:i}=e.saponification_value_mg_koh_per_g,r=kn(e,t),l=d=>R(d,1);return s`<tr>
    <th scope="row">${e.name}${r&&r!==e.name?s` <small>${r}</small>`:u}</th>
    <td>${l(i)} <small>${l(n)} to ${l(o)}</small></td>
    <td>${e.inci}</td>
  </tr>`}var R_=e=>e.goes_into==="lye",S_=({role:e})=>e==="alkali",mT=e=>S_(e)?"down":"nearest",qo=(e,t)=>te(e,t,mT(t));function Na(e){let t=e.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>R_(i)),n=({one:i})=>i.role==="water",o=({one:i})=>S_(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function D_(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!R_(t))}function ec(e){let t=D(e,"/measured_density");return s`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${h({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${h({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${h({label:"Unmould after",of:e,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${h({label:"Cut within",of:e,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${_T(e)}
    ${A({of:e,name:"density",pointers:["/measured_density"],summary:`Measured density${t&&`: ${t}`}`,body:()=>h({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var fT=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],A_={after:"",mass:""},P_=3,hT={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:P_},()=>A_)}}};function gT(e){return g(e,"/drying/weighings")!==void 0?"weighed":g(e,"/drying")!==void 0?"law":g(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function _T(e){let t=gT(e);return s`${T({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:fT,puts:o=>({...fe(e,"",["drying","water_lost_in_cure"]),...hT[o]})})}
  ${t==="share"?s`<div class="row">
          ${h({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${t==="law"?s`<div class="row">
          ${h({label:"Of the batter's water, gone in the end",of:e,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${h({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${t==="weighed"?$T(e):u}`}function $T(e){let t={of:e,at:"/drying/weighings",least:P_};return s`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${k(t).map((n,o)=>s`<div class="row named" id=${C(t,o)}>
          ${h({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${h({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${U(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${G(t,"One more weighing",()=>N(t,A_,"weighing"))}`}var bT=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],ja=e=>Zn(e).map(t=>[t.id,t.name]),O_=["unsaid","Not given"],M_=["none","Holds none"],B_=e=>e===void 0?"unsaid":e==="none"?"none":"some",wT=e=>t=>t==="some"?e:t==="none"?"none":void 0;function F_(e,t){return tc(e,`${t}/contains_fat`,[O_,M_,["some","Holds fat"]],ja(e))}function tc(e,t,n,o){let i=B_(g(e,t)),r=n.some(([l])=>l===i)?i:void 0;return s`${T({of:e,question:"Fat in it",at:t,chosen:r,answers:n,puts:wT({fat:"",share:""})})}
  ${i==="some"?s`<div class="row">
          ${$e({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${h({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:u}`}var yT=[O_,M_,["some","Holds acid"],["typed","By what it takes up"]],vT={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function nc(e,t){let n=`${t}/contains_acid`,o=g(e,`${n}/takes_up`)!==void 0?"typed":B_(g(e,n));return s`${T({of:e,question:"Acid in it",at:n,chosen:o,answers:yT,puts:i=>vT[i]})}
  ${o==="some"?s`<div class="row">
          ${$e({label:"Which acid",of:e,at:`${n}/acid`,answers:bT.map(i=>[i,i]),unsaid:"choose ..."})}
          ${h({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?s`<div class="row">
          ${h({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?oc(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function oc(e,t,n){let o=g(e,t)===!0?"yes":"no";return T({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var kT=["tsp/lb","tbsp/lb","tsp/kg"],Ha=["%","g/kg",...kT].flatMap(e=>[`${e} of fats`,`${e} of batter`]),L_=[...Ha,"% of finished soap","g/kg of finished soap"];function C_(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function qa(e,t,n,o,i=!1){let r=J(e,t),[l,d]=C_(D(e,t),o),c=a.typed?.key===r?a.typed.text:l;!i&&!(l.trim()&&d)&&dt(e,t,r,l.trim()?`${n}: of what`:n);let m=Ne(e,t),_=(w,x)=>{let K=`${w.trim()} ${x}`.trim();Z(e,t,i&&!w.trim()?void 0:K),Q()},b=w=>{let x=w.target.value,[K,Be]=C_(x,o);f({typed:{key:r,text:x}}),_(K,Be||d)};return s`<div class="field rate ${m?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${M(c)}
        @input=${b}
        @blur=${Eo}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${r}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${w=>_(c,w.target.value)}
      >
        <option value="" .selected=${M(d==="")}>of what?</option>
        ${o.map(w=>s`<option value=${w} .selected=${M(w===d)}>${w}</option>`)}
      </select>
    </div>
    ${ge(r,m)}
  </div>`}function xT(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var TT=.01+1e-9;function Ri(e,t){let{sum:n,unread:o}=xT(t),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=TT?`${e} add to ${i(n)}.`:r>0?`${e} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-r)} too much.`}var I_=(e,t)=>Zn(e).find(n=>n.id===t)?.name??t,Fr=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),Ua=e=>k(Fr(e));function sc(e){let t=Ua(e),n=a.picking?.of===e&&a.picking.row===t.length;return s`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>RT(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?Ri("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${t.length?u:dt(e,"/fats",J(e,"/fats"),"The fats")}
    ${n?E_(e):G(Fr(e),"Add a fat",()=>W_(e,t.length))} ${FT(e)}
  </section>`}function RT(e,t,n){let o=`/fats/${t}`,i=I_(e,String(n[t].fat??""))||"Which fat?",r=ke(e,`${o}/fat`)??ke(e,o),l=a.picking?.of===e&&a.picking.row===t;return s`<li class="formula-row" id=${C(Fr(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${J(e,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?ic():W_(e,t)}
      >
        ${i}
      </button>
      ${h({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${U(Fr(e),t,i)}
    </div>
    ${r?s`<p class="complaint">${r}</p>`:u} ${l?E_(e):u}
    ${l_(e,String(n[t].fat??""))}
    ${A({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${AT(n[t])}`,body:()=>MT(e,t)})}
  </li>`}function W_(e,t){f({picking:{of:e,row:t,text:""}}),z(L("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function ic(){let e=a.picking;f({picking:void 0}),e&&z(ne(e.of,e.row<Ua(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function rc(e,t){let{row:n}=a.picking,o=Ua(e);f({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};Rr(Fr(e),`${I_(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],ne(e,`/fats/${n}/share`))}function E_(e){let{row:t,text:n}=a.picking,o=Ua(e).map(m=>m.fat),i=ST(e,n),r=i.filter(m=>!o.includes(m.id)||o[t]===m.id),l=r.find(m=>m.id===a.picking.lit),d=m=>{f({picking:{of:e,row:t,text:m.target.value}})},c=m=>{let _=l?r.indexOf(l)+m:m>0?0:r.length-1,b=r[(_+r.length)%r.length];b&&(f({picking:{of:e,row:t,text:n,lit:b.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${b.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&ic(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let _=r.find(w=>ze(w.name)===ze(n.trim())),b=l??(r.length===1?r[0]:_);m.key==="Enter"&&b&&rc(e,b.id)};return s`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${l?`fat-${l.id}`:u}
          .value=${n}
          @input=${d}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${ic}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${a.fats.length?i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name.":"The list of fats is on its way ..."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[t]!==m.id,b=kn(m,n);return s`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===l?"lit":""}
          ?disabled=${_}
          aria-selected=${m===l||o[t]===m.id?"true":"false"}
          @click=${()=>rc(e,m.id)}
        >
          ${m.name}${b===m.name||!b?"":`, ${b}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{DT(e,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function ST(e,t){let n=Zn(e).filter(l=>kn(l,t)!==void 0),o=t.split(/\s+/).filter(l=>l.length>2);if(n.length||o.length<2)return n;let i=l=>o.filter(d=>kn(l,d)!==void 0).length,r=Math.max(...Zn(e).map(i));return r?Zn(e).filter(l=>i(l)===r):[]}async function DT(e,t){if(!await Qs(e))return;let o=t.trim(),i=ya(o,[...a.fats,...X("own_fats","/fats")]),r=X("own_fats","/fats").length;Z("own_fats",`/fats/${r}`,{...Ma,id:i,name:o}),rc(e,i),je("own_fats",i),z(ne("own_fats",`/fats/${r}/${o?"inci":"name"}`))}function AT(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be filled in":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var PT=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],OT={published:void 0,one:"",range:{low:"",typical:"",high:""}};function MT(e,t){let n=`/fats/${t}/saponification_value`,o=g(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=g(e,`/fats/${t}/confirmed`)!==void 0,l=(d,c)=>h({label:d,of:e,at:c,number:!0,short:!0});return s` ${h({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${T({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:PT,puts:d=>OT[d],hint:BT(e,D(e,`/fats/${t}/fat`))})}
  ${i==="one"?s`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?s`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||r?oc(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function BT(e,t){let n=Zn(e).find(l=>l.id===t);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:r}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${r}).`}function FT(e){let t=$r(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=D(e,"/own_fats");return A({of:e,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>h({label:"Its name, as it lies beside this formula",of:e,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var CT=e=>me.includes(e);function za(){let e=a.complaint;return!e?.field||e.lye_heavy?!1:wi().some(({of:t,at:n})=>xt(t)&&(n===e.field||n.startsWith(`${e.field}/`)))}function Cr(){let e=a.complaint?wi():[];return e.length?s`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${e.length}</p>
    <ul class="choice">
      ${e.map(t=>s`<li>
            <button type="button" @click=${()=>LT(t)}>
              ${t.part?s`<small>${t.part}</small> `:u}${t.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function LT({of:e,id:t,folds:n}){for(let o of n)le(o);f({has_asked:!0}),CT(e)?(a.view!=="formula"||a.formula_of!==e)&&Xe(e):a.view!=="set-up"&&!(e==="own_fats"&&a.view==="formula")&&f({view:"set-up"}),requestAnimationFrame(()=>z(L(t)))}var N_="danger-of-superfat";function ac(e,t){return s`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${h({label:"Superfat (share of all fat left unsaponified)",of:e,at:"/superfat",unit:"%",term:"superfat",described_by:Xn(e).length?N_:void 0})}
    </div>
    ${xr(e,N_)} ${IT(e)} ${qT(e,t)}
  </section>`}function IT(e){let t=X(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return s`${T({of:e,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>WT(t,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${t.map((i,r)=>ET(e,i,r,t.length>1))}
  ${t.length>1?s`<p class="total" role="status">
          ${Ri("The two",t.map(i=>i.share))}
        </p>`:u}`}function WT(e,t){let n=(o,i)=>({purity:"",...e.find(r=>r.alkali===o),alkali:o,share:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function ET(e,t,n,o){let i=`/alkali/${n}`,r=String(t.alkali??""),l=ke(e,i)??ke(e,`${i}/alkali`);return s`<div class="formula-row">
    ${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||t.share!=="100 %"?h({label:`${r}: share of the fats it saponifies`,of:e,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${h({label:`${r}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${A({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${NT(t.purity_range)}`,body:()=>jT(e,i)})}
  </div>`}var NT=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function jT(e,t){let n=`${t}/purity_range`,o=g(e,n)!==void 0;return s`${T({of:e,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?s`<div class="row">
          ${h({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${h({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var HT={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function qT(e,t){let n=Object.keys(g(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(HT);return s`${T({of:e,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:zT(t)})}
    <div class="row">${n.map(r=>UT(e,r))}</div>`}function UT(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?h({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?h({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):h({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function zT(e){if(!(!e||a.is_old))return`It now makes a strength of ${R(e.lye_strength_percent,1)} %; ${R(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${R(e.water_percent_of_fats,1)} % of the fats.`}function io(e,t,n){let o=JT(e,t);return A({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>s`${VT(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${j_(e,`${t}/allergens`,"Allergen","Add an allergen",(i,r)=>QT(e,i,r))}
        ${h({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function JT(e,t){let n=X(e,`${t}/allergens`).length;return[g(e,`${t}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var lc={name:"",share:""},KT={unsaid:void 0,one:"",many:[lc]};function VT(e,t,n){let o=g(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=l=>l==="many"&&o?[{...lc,name:o}]:KT[l];return s`${T({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?h({label:"INCI name",of:e,at:t}):u}
  ${i==="many"?s`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${j_(e,t,"INCI name","One more INCI name")}`:u}`}function QT(e,t,n){return T({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:g(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function j_(e,t,n,o,i){let r={of:e,at:t};return s`${k(r).map((l,d)=>s`<div class="row named" id=${C(r,d)}>
        ${h({label:`${n} ${d+1}`,of:e,at:`${t}/${d}/name`})}
        ${h({label:`Share ${d+1}`,of:e,at:`${t}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${d}`,d)??u} ${U(r,d,String(l.name||`${n} ${d+1}`))}
      </div>`)}
  ${G(r,o,()=>N(r,lc,n))}`}var GT=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:aR},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:tR},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:nR},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:oR}];function uc(e){return GT.map(t=>{let n={of:e,at:`/${t.list}`},o=k(n),i=(r,l)=>s`<li class="formula-row" id=${C(n,l)}>
        ${ZT(e,t,n,r,l)} ${t.row(e,`${n.at}/${l}`,r)}
      </li>`;return s`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?s`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:s`<p class="aside">${t.aside}</p>`}
      ${G(n,t.add,()=>N(n,YT(t),t.add.replace("Add ","")))}
    </section>`})}function YT(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function ZT(e,t,n,o,i){let r=`/${t.list}/${i}`,l=ke(e,r),d=String(o.name||`number ${i+1} of the ${t.list}`);return s`${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${h({label:"Name",of:e,at:`${r}/name`})}
      ${t.list==="liquids"?u:qa(e,`${r}/rate`,"How much",Ha)}
      ${U(n,i,d)}
    </div>`}function H_(e,t,n,o){let i=`${t}/goes_into`,r=g(e,i);return T({of:e,question:"Goes into",at:i,chosen:r||void 0,answers:n,puts:p=>p,hint:o||r?void 0:"The batter, unless you name another place.",optional:!o})}function q_(e,t,n){let o=g(e,`${t}/stirred_in`);return s`${H_(e,t,eR,n)}
  ${g(e,`${t}/goes_into`)==="lye"||o!==void 0?T({of:e,question:"Stirred into the lye",at:`${t}/stirred_in`,chosen:String(o??""),answers:XT,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var XT=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],eR=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function dc(e,t,n){let o=(l,d,c)=>l?`${d}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(l=>`${t}/${l}`);return A({of:e,name:`${t} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>s` <div class="row">
          ${h({label:"Bulk density (for spoons)",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${h({label:"True density (in the batter)",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${qa(e,`${t}/limit`,"The most that the supplier's document allows",L_,!0)}`})}function cc(e,t,n,o){let i=(l,d)=>l===void 0?"":l==="none"?`no ${d}`:d,r=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return A({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>s`${F_(e,t)} ${o?nc(e,t):u}`})}var Ja=(e,t,n)=>io(e,t,String(n.name||"it"));function tR(e,t,n){return s`${q_(e,t,!0)}
    <div class="folds">${cc(e,t,n,!0)} ${dc(e,t,n)} ${Ja(e,t,n)}</div>`}function U_(e,t,n){return A({of:e,name:`${t} place`,pointers:[`${t}/goes_into`,`${t}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>q_(e,t,!1)})}function nR(e,t,n){return s`<div class="folds">
    ${dc(e,t,n)} ${Ja(e,t,n)} ${U_(e,t,n)} ${cc(e,t,n,!1)}
  </div>`}function oR(e,t,n){return s`${rR(e,t)}
    <div class="folds">
      ${dc(e,t,n)} ${Ja(e,t,n)} ${U_(e,t,n)} ${cc(e,t,n,!0)}
    </div>`}var iR=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function rR(e,t){let n=`${t}/dispersed_in`,o=g(e,n)!==void 0,i=g(e,`${n}/from`);return s`${T({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?s`<div class="row">
            ${$e({label:"Which oil",of:e,at:`${n}/fat`,answers:ja(e),unsaid:"choose ..."})}
            ${h({label:"Oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${T({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:iR,puts:l=>l,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var sR=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function aR(e,t,n){let o=(i,r,l)=>A({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:r,body:l});return s`${uR(e,t,n)}
    ${H_(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${cR(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>lR(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>nc(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>h({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Ja(e,t,n)}
    </div>`}function lR(e,t){let n=g(e,t)===!0?"ice":"liquid";return T({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function uR(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({...fe(e,t,["replaces","rate"]),[r]:""});return s`${T({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:dR,puts:i})}
  ${o==="replaces"?s`<div class="row">
          ${h({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?qa(e,`${t}/rate`,"Rate",Ha):u}`}var dR=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function cR(e,t){let n=`${t}/composition`,o=typeof g(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(d,c)=>h({label:d,of:e,at:`${n}/${c}`,unit:"%",short:!0});return s`${T({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?s`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${tc(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...ja(e)])}
          <div class="row">
            ${h({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:s`<div class="row">
          ${$e({label:"Built-in figures of",of:e,at:n,answers:sR.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var Lr=()=>Object.keys(g("studio","/cups")??{}),Ir=()=>Lr().length===1?{net:""}:Lr().length?{cup:"",net:""}:{holds:"",net:""},z_="\0another";function Wr(e,t="Cup holds"){let n=`${e}/holds`,o=Lr();if(g("run",n)!==void 0||!o.length)return s`${h({label:t,at:n,unit:"ml",short:!0})}${o.length?pR(e):u}`;let i=l=>l===z_?E("run","Another cup",e,{...pc(e),holds:""},ne("run",n)):E("run",`Cup: ${l}`,e,{...pc(e),cup:l}),r=l=>D("studio",`/cups/${W(l)}`);return $e({label:"Which cup",at:`${e}/cup`,answers:[...o.map(l=>[l,`${l}, ${r(l)}`]),[z_,"Another cup"]],unsaid:"choose ...",chosen:D("run",`${e}/cup`)||(o.length===1?o[0]:""),take:i})}function pc(e){let{cup:t,holds:n,...o}=g("run",e)??{};return o}var pR=e=>s`<button type="button" @click=${()=>E("run","A cup of the studio",e,pc(e))}>
    A cup of my studio
  </button>`;function K_(){return se()?s`<div class="row">
    ${Lr().map(e=>h({of:"studio",label:`${e} holds`,at:`/cups/${W(e)}`,unit:"ml",short:!0,optional:!0}))}
    ${mR()}
  </div>`:s`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function mR(){let e=()=>{let t=document.getElementById("new-cup"),n=t.value.trim()||J_();t.value="",E("studio",`${n} added`,`/cups/${W(n)}`,"",ne("studio",`/cups/${W(n)}`))};return s`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${J_()} />
    </div>
    <button type="button" @click=${e}>Add the cup</button>`}function J_(){for(let e=1;;++e){let t=e===1?"weigh-cup":`weigh-cup ${e}`;if(!Lr().includes(t))return t}}var fR=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]),mc=e=>({run:`/${e}/temperatures`,studio:`/temperatures/${e}`});function Ka(e){let{run:t}=mc(e);return A({name:t,pointers:[t],summary:"How warm",body:()=>s` <p class="hint">
          ${se()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${oo("How warm",[mc(e)])} ${I("run",t)} ${hR(e)}`})}function hR(e){let{run:t,studio:n}=mc(e),o=d=>({run:`${t}/${d}`,studio:`${n}/${d}`}),i=a.units==="us"?"\xB0F":"\xB0C",r=(d,c,p=i)=>Me(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),l=o("cooled_in");return s`<div class="row">
    ${r("room_at","Room and dry alkali")} ${r("water_at","Water")}
    ${r("ice_share","Of the water, as ice","%")} ${r("lye_used_at","Lye when it is used")}
    ${r("fats_at","Fats")} ${r("batter_below","Batter must stay below")}
    ${$e({label:"The lye cools in",...Dr(l),answers:fR,unsaid:"not given",optional:!0})}
  </div>`}var pt=()=>$(a.run.now,"/pipe")!==void 0;function V_(){let e=t=>{let n=P(t,"/pipe",{formula:"",fills_headspace:"",whip:Ir()});return se()?n:P(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};le("set-up pipe"),ct("run","Topping added",e,L("lane-pipe"))}function gR(e){let t=Object.keys($(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:P(o,i,void 0),e)}function _R(){ct("run","Topping removed",gR,L("topping-back"))}function Q_(){let e=a.past.at(-1)?.run?.now;return!e||$(e,"/pipe")===void 0||pt()?u:s`<button type="button" id="topping-back" @click=${ur}>Bring the topping back</button>`}function fc(){return s`${xR()} ${Ka("pipe")}
    <p class="choice"><button type="button" @click=${_R}>Take the topping away</button></p>`}var $R=["trials","beads","envelope"];function hc(e){return $R.every(t=>g("run",`/pipe/${t}`)===void 0)&&dt("run","/pipe",`${J("run","/pipe/trials")}-add`,"How large the topping is"),s`<h3>How large is the topping?</h3>
    ${I("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${Ve({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:Ir()},body:bR})}
      ${Ve({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:wR})}
    </div>
    ${Ve({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:r_,body:()=>s_(e)})}
    ${e?vR(e):u}`}function bR(){let e={at:"/pipe/trials/weighed",least:1};return s`<div class="trials">
      ${k(e).map((t,n)=>s`<div class="row" id=${C(e,n)}>
            ${h({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${U(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${G(e,"One more trial",()=>N(e,"","trial"))}
    <div class="row">
      ${h({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${Wr("/pipe/trials/weigh_cup")}
    </div>
    ${I("run","/pipe/trials/weigh_cup")}`}function wR(){let e="/pipe/envelope",t=g("run",`${e}/form`);return s`${T({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${h({label:"Diameter",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${h({label:"Height",at:`${e}/height`,unit:"mm",short:!0})}
      ${h({label:"Share that is soap, not air",at:`${e}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var yR={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function vR(e){let t=e.visible_by;if(!t)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return s`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},l)=>F({key:`pipe.by.${i}`,label:yR[i],note:o(l),shown:Oe(a.units,r),of:`pipe.visible_by.${i}_ml`}))}
    ${kR(e)}`}function kR(e){let t=e.visible_by?.suggested_correction;if(!t||a.is_old)return u;let n=R(t.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",r=i&&$(a.run.now,`${o}/correction`)!==t.correction,l=()=>E("run","correction kept",o,{correction:t.correction,trials:t.trials});return s`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?s`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function gc(e){return s`<h3>The whip planned for</h3>
    <div class="row">
      ${h({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${Wr("/pipe/whip")}
    </div>
    ${I("run","/pipe/whip")}
    ${e?.loads?s`<p class="aside of-plan">${e.loads} bag loads.</p>`:u}`}function xR(){let e="/pipe/pace",t=(n,o,i,r=!1)=>h({label:n,at:`${e}/${o}`,unit:i,optional:r,short:!0});return A({name:"pace",pointers:[e],summary:"Piping speed",body:()=>Ve({at:e,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>s`<div class="row">
            ${t("Can be piped for","open_time","min")} ${t("To pipe one","time_per_piece","s")}
            ${t("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function TR(e,{at:t,figure:n}){let o=$(e,t),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function Er(e,t,n){return t?s`<button type="button" @click=${()=>n(t.at,TR(e,t))}>It is really so: keep it</button>`:u}var $c=500,RR=()=>$(a.run.now,"/cut")===void 0&&SR()>=$c,SR=()=>a.plan?.pour.brimful_ml??a.measured?.gauge.pockets[0]?.brimful_ml??0,Va={run:"/cut/kerf",studio:"/kerf"};function G_(e){le("set-up cut"),E("run","Cut","/cut",{bar:_c[e],...se()?{}:{kerf:""}},ne("run",`/cut/bar/${Object.keys(_c[e])[0]}`))}function DR(){E("run","Left whole","/cut",void 0,L("cut-into-bars"))}function Y_(){return RR()?s`<button type="button" id="cut-into-bars" @click=${()=>G_("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>G_("slab")}>Cut it into bars</button>`:u}var _c={loaf:{thickness:""},slab:{length:"",width:""}};function AR(){let e=g("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var PR={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function Z_(){let e=AR(),t=(o,i)=>h({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=D("run","/cut/along");return s` ${T({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>_c[o]})}
    <div class="row">
      ${e==="loaf"?h({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${e==="slab"?["length","width"].map(o=>h({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${Me(Va,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${oo("Kerf",[Va])}</p>
    ${e?T({question:e==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:PR[e],puts:o=>o||void 0}):u}
    <button type="button" @click=${DR}>Leave it whole</button>`}var Qa=e=>/^\s*0*[1-9]\d{0,8}\s*$/.test(e)?Number(e):void 0;function Ga(e,t,n){return s`<div class="field short">
    <label for=${e} data-said="required">Pieces to sell</label>
    <input
      id=${e}
      aria-required="true"
      .value=${M(t)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}function OR({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,m])=>m),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-e.brim-2*n+i,d=l-r-n,c=[e.left-n,d,e.right-e.left+2*n,-e.floor+n-d],p=(m,_)=>S`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return s`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",pr(t,l))}${p("side",pr(e.loops))}
    </svg>
  </div>`}function Si(e,t=!1,n=[]){let o=n.length?s`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!e)return s`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,r=i.pockets[0];return s`${OR(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${O(Oe(a.units,r.brimful_ml))}</b>${i.pockets.length>1?s` in each of ${i.pockets.length}, ${O(Oe(a.units,i.total_ml))} together`:u},
      ${O(Ae(a.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?s`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${O(Oe(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?s`<ul class="limits">
            ${i.notes.map(l=>s`<li>${l.text}</li>`)}
          </ul>`:u}`}var MR={mm:"in",g:"oz","\xB0C":"\xB0F"},BR={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function Ya(e,t,n=""){let o=bc(e);if(o)return o.unit??"";let i=yt($(q(),e));return BR[t]?.test(i)?i:n||(a.units==="us"?MR[t]??t:t)}var Za=()=>f({typed:void 0}),Di=e=>`d${e.replaceAll("/","-")}`,bc=e=>a.typed?.key===Di(e)?a.typed:void 0,Xa=e=>bc(e)?.text??String($(q(),e)??"");function ro(e){let{complaint:t}=ie();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function wc(e,t,n,o){let{pointer:i}=e,r=l=>{let d=l.target.value,c=e.unit?Ya(i,e.unit,e.unit_before):"";f({typed:{key:Di(i),text:d,unit:c}}),Te(i,FR(e,d,c))};return s`<input
    id=${Di(i)}
    .value=${M(Xa(i))}
    @input=${r}
    @blur=${Za}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${t??u}
    aria-invalid=${ro(i)?"true":"false"}
  />`}function FR(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&Je(t)?`${t.trim()} ${n}`:t}function mt(e,t){let n=Di(e.pointer),o=ro(e.pointer),i=CR(e.pointer)??e.hint,r=e.unit?` (${Ya(e.pointer,e.unit,e.unit_before)})`:"";return s`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${r}</label> ${wc(e,o||i?`${n}-said`:void 0,t)}
    ${ge(n,o,i)}
  </div>`}function CR(e){let t=$(q(),e),n=bc(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function el(e){let t=e.toLowerCase(),{file:n,shipped:o}=ie().open,i=o?"":n;return a.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===t)?.file}async function Nr(e){let{open:t}=ie();try{if(await Yt(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await $s()})}catch(n){if(!(n instanceof y))throw n;return Rd(n)}a.run.file&&(It(),ce()),e(t.file)}var Sn="/shape/points",X_=500,so=(e,t)=>[Sn,e,...t?[t]:[]].join("/"),e$=e=>Array.from({length:e.least},()=>({}));function t$(e){let t=rt(q(),Sn),n=IR(),{complaint:o}=ie(),i=o?.field===Sn&&!o.about?o.line:void 0;return s`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(r=>s`<span
              >${r.label} (${Ya(so(-1,r.name),r.unit,n$(e,t.length,r.name))})</span
            >`)}
      </div>
      ${t.map((r,l)=>LR(e,l,n))}
    </div>
    ${i?s`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${t.length>=X_} @click=${()=>nl(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function LR(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=WR(t),r=l=>{let{name:d,label:c,unit:p}=e.columns[l],m={label:c,pointer:so(t,d),unit:p,unit_before:n$(e,t,d)},_=`${c}, ${n.has(t)?o:`point ${t+1}`}`;return wc(m,i?`point-${t}-said`:void 0,ER(e,t,l),_)};return s`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>nl(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>o$(e,t)}>×</button>
    ${i?s`<p id="point-${t}-said" class="complaint">${i}</p>`:u}
  </div>`}function IR(){let e=[...Xi(q()),...Ms(q())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function WR(e){let{complaint:t}=ie();return ro(so(e))??(t?.about===so(e)?t.line:void 0)}function n$(e,t,n){let o=(i,r)=>yt($(q(),so(i,r)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function tl(e,t){queueMicrotask(()=>document.getElementById(Di(so(e,t)))?.focus())}function nl(e,t){let n=[...rt(q(),Sn)];n.length>=X_||(n.splice(t,0,{}),Za(),Te(Sn,n),tl(t,e.columns[0].name))}function o$(e,t,n=0){let o=rt(q(),Sn).filter((i,r)=>r!==t);Za(),Te(Sn,o.length?o:[{}]),tl(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function ER(e,t,n){let[o,i]=e.columns.map(({name:r})=>r);return r=>{let l=!Xa(so(t,o))&&!Xa(so(t,i));if(r.key==="Enter"&&r.shiftKey)nl(e,t+1);else if(r.key==="Enter"&&n===0)tl(t,i);else if(r.key==="Enter"&&t+1<rt(q(),Sn).length)tl(t+1,o);else if(r.key==="Enter")nl(e,t+1);else if(r.key==="Backspace"&&l&&rt(q(),Sn).length>1)o$(e,t,t>0?1:0);else return;r.preventDefault()}}var yc={weighings:[""]},vc=/\.(3mf|gltf|glb)$/i;function ol(e){let t=Fn(e);return t?{kind:e,points:e$(t)}:{kind:e}}var NR=()=>Te("/water",yc),un=e=>Pt(q(),e),jr=()=>Zi(q());function i$(e){let{open:t,answer:n,is_old:o}=ie();return s`${sn(t,()=>{Nr(e)})} ${an(t)}
    ${t.shipped?u:Ti(a.files?.moulds.find(i=>i.file===t.file))}
    ${un("shape")&&un("mesh")?s`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${un("shape")?ue("Shape",jr(),Object.entries(pf),jR):u}
    <div class="beside ${Fn(jr())?"rows":""}">
      <div>
        ${kc()} ${un("shape")?qR():u} ${un("mesh")?UR():u}
        ${xc()} ${un("water")?JR():u} ${VR()}
      </div>
      <div class="stays">${Si(n,o,s$())} ${QR(e)}</div>
    </div>`}function jR(e){let t={...ie().shapes,[jr()]:q().shape};v(ie(),{shapes:t,answer:void 0}),Te("/shape",t[e]??ol(e))}function HR(){let{shipped:e,file:t}=ie().open;return e?a.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function kc(){let e=HR();return mt({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function qR(){let e=jr(),t=Fn(e);return s`${ei(e).length?s`<div class="row">
          ${ei(e).map(n=>mt({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${t?t$(t):u}`}function xc(e=mu(q())){return s`<div class="row">
      ${e?u:mt({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${mt({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${mt({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${mt({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var Tc=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],Rc=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function UR(){let e=o=>String($(q(),`/mesh/${o}`)??""),t=(o,i,r)=>{let l=ro(`/mesh/${i}`);return s`<h4>${o}</h4>
      ${ue(o,e(i),r,d=>Te(`/mesh/${i}`,d||void 0))}
      ${l?s`<p class="complaint">${l}</p>`:u}`},n=ro("/mesh/file");return s`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?s`<p class="complaint">${n}</p>`:u}
    ${vc.test(e("file"))&&!e("unit")?u:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",Tc)} ${t("Which way is up","up",Rc)}
    ${e("role")==="body"?zR():u}
    <div class="row">
      ${mt({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${mt({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function zR(){let e=$(q(),"/mesh/on_board")===!0?"yes":"no";return s`<h4>Open below, and stood on a board?</h4>
    ${ue("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>Te("/mesh/on_board",t==="yes"?!0:void 0))}`}function JR(){let e=$(q(),"/water/filled_to"),t=e===void 0?void 0:e==="brim"?"brim":$(e,"/depth")!==void 0?"depth":"below_brim",n=r=>Te("/water/filled_to",r==="brim"?"brim":{[r]:""}),o=$(q(),"/water/weighed_in"),i=t===void 0||t==="brim"?ro("/water/filled_to"):void 0;return s`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${mt({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${ue("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?s`<p class="complaint">${i}</p>`:u}
    ${t==="depth"?mt({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${t==="below_brim"?mt({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${ue("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>Te("/water/weighed_in",r))}
    <div class="row">
      ${rt(q(),"/water/weighings").map((r,l)=>mt({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},KR(l)))}
    </div>
    ${ie().complaint?.field==="/water/weighings"?s`<p class="complaint">${ie().complaint.line}</p>`:u}
    <button type="button" @click=${r$}>One more round</button>`}function r$(){let e=rt(q(),"/water/weighings").length;Te(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var KR=e=>t=>{t.key==="Enter"&&(e+1===rt(q(),"/water/weighings").length?r$():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function VR(){let e=(t,n)=>s`<button type="button" @click=${n}>${t}</button>`;return s`<div class="choice">
    ${un("shape")?u:e("Add measures, as a check",()=>Te("/shape",ol("block")))}
    ${un("shape")&&un("mesh")?e("Leave the measures out",()=>Te("/shape",void 0)):u}
    ${un("water")?e("Leave the water out",()=>Te("/water",void 0)):e("Add weighed water",NR)}
  </div>`}function s$(){let e=Ms(q()).length;return e?[...er(q()),e===1?"the other number of a point":`the other numbers of ${e} points`]:er(q())}function QR(e){let t=String(q().name??"").trim(),n=el(t),{open:o,answer:i,is_old:r,complaint:l}=ie(),d=i&&!r&&!l&&!s$().length&&t&&!n,c=o.shipped?"":o.file;return s`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{Nr(e)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?s`<p class="aside">It stays in ${c}.</p>`:u}
    ${t?u:s`<p class="hint">Give it a name first.</p>`} ${Sc(t,n)}
    ${l?s`<p class="alarm" role="status">${GR(l.field)}${l.line}</p>
            ${Er(q(),l.keep,Te)}`:u}`}var Sc=(e,t)=>t?s`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:u;function GR(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=ei(jr()).find(({name:r})=>e===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var YR=200*2**20;async function a$(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:t}),Te("/name",e.name.replace(/\.\w+$/,"")),e.size>YR){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return v(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await Rm(e,o=>v(t,{share:o}));v(t,{share:1,upload:n.file}),await u$(t)}catch(n){v(t,{complaint:n instanceof y?n.message:String(n)})}}async function u$(e){let t=e.questions+1;v(e,{questions:t,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:r}=e;try{let l=await pi({file:n,unit:o,role:i,up:r});t===e.questions&&v(e,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof y))throw l;if(t!==e.questions)return;let d=o?e.sizes:t0(l.complaint),c=d.length&&!o?void 0:H(l.complaint);v(e,{sizes:d,complaint:c,is_measuring:!1})}}async function ZR(e){let{questions:t,upload:n,unit:o,up:i}=e;try{let r=await ym({file:n,unit:o,up:i});t===e.questions&&v(e,{inspection:r})}catch(r){if(!(r instanceof y))throw r;t===e.questions&&v(e,{complaint:H(r.complaint)})}}function XR(e){return e.inspection?s`<h4>Every defect of the mesh</h4>
    ${e.inspection.defects.length?s`<ul>
            ${e.inspection.defects.map(e0)}
          </ul>`:s`<p>None.</p>`}`:s`<button type="button" @click=${()=>{ZR(e)}}>List every defect of the mesh</button>`}var e0=({text:e})=>s`<li>${e}</li>`;function t0({asks:e,choices:t=[]}){if(e!=="unit")return[];let n=o=>(o??[]).map(i=>R(i,2)).join(" \xD7 ");return t.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function Dc(e,t){v(e,t),u$(e)}function d$(e,t){let n=l=>{let d=l.target;a$(d.files?.[0]),d.value=""},o=l=>{l.preventDefault(),a$(l.dataTransfer?.files[0])},[i,r]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return s` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${r} @change=${n} />
    </div>
    ${a.mesh?n0(a.mesh,e,t):u}`}function n0(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,l])=>[r,l?`${r}: ${l} ${r}`:r]);return s` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?s`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:u}
    ${e.is_measuring?s`<p role="status">Measuring ...</p>`:u}
    ${e.upload&&!vc.test(e.name)?s`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${ue("Unit of the file's numbers",e.unit,i,r=>Dc(e,{unit:r}))}`:u}
    ${e.complaint?s`<p class="alarm" role="alert">${e.complaint}</p>`:u}
    ${e.upload&&!e.is_measuring&&(e.complaint||e.answer)?XR(e):u}
    ${e.upload&&(e.unit||e.answer)?s`<h4>What it shows</h4>
            ${ue("Role",e.role??e.answer?.gauge.role,Tc,r=>Dc(e,{role:r}))}
            <h4>Which way is up</h4>
            ${ue("Up",e.up??"",Rc,r=>Dc(e,{up:r||void 0}))}`:u}
    ${e.answer?s`${Si(e.answer)} ${o0(e,t,n)}`:u}`}var c$=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function o0(e,t,n){let o=String(q().name??"").trim(),i=el(o),r=o&&!i&&!e.is_keeping;return s`${kc()} ${xc(c$(e))} ${Sc(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>l$(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>l$(e,n)}>More settings</button>
    </div>
    ${e.is_keeping?s`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function l$(e,t,n){v(e,{is_keeping:!0});try{let o=i0(e,await Sm(e.upload,s0(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await r0(o))return t(o);gi(o,"mesh",ie().title),await Nr(n),v(e,{complaint:a.mould?.complaint?.line})}catch(o){v(e,{complaint:o instanceof y?o.message:String(o)})}v(e,{is_keeping:!1})}function i0(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=q();return{...i,...c$(e)||o===void 0?{}:{cavities:o},mesh:n}}async function r0(e){try{return await Mn({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof y&&t.status===422)return!1;throw t}}var s0=e=>ti(e.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var il={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},p$={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function m$(e){ve(),en();let t={...p$,shape:ol("block")};e==="mesh"?gi(p$,"mesh",il[e]):gi(e==="water"?{...t,water:yc}:t,"form",il[e]),sl()}async function f$(e,t){en();let n=await gg(e,t);return n&&sl(),n}async function rl(e){en(),await _g(e)&&sl()}function a0(e){gi(e,"form","More about this mould"),sl()}function sl(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function h$(e){if(!a.mould)return;let{way:t,title:n}=a.mould;return s`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?d$(e,a0):i$(e)}
  </section>`}var Ac=()=>f({chosen_mould:void 0});function Hr(e,t){ve();let n=a.files?.moulds.find(r=>r.file===e),o=a.catalogue.find(r=>r.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:t};f({chosen_mould:i}),g$(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}var l0=2e3;async function g$(e){if(e===a.chosen_mould)try{v(e,{answer:await pi({file:e.file})}),v(e,{complaint:void 0})}catch(t){v(e,{complaint:t instanceof y?t.message:String(t)}),t instanceof y&&t.may_pass&&window.setTimeout(()=>{g$(e)},l0)}}var u0=e=>a.files?.moulds.find(t=>t.file===e);function _$(e,t){let n=()=>t(async()=>{await f$(e.file,e.shipped)&&Ac()});return s`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"built-in":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?s`<p role="status">${e.told}</p>`:u} ${e.note?s`<p>${e.note}</p>`:u}
    ${Ca(u0(e.file))}
    ${e.complaint?s`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${e.answer?Si(e.answer):e.complaint?u:s`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?u:p0(e,t)}
    </div>
  </section>`}var $$=({answer:e})=>(e?.gauge.pockets[0]?.brimful_ml??0)>=$c;function d0(e){let t=$$(e)?e.slice.trim():"";return Je(t)?`${t} mm`:t||void 0}var c0=e=>s`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${M(e.slice)}
      @input=${t=>v(e,{slice:t.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function p0(e,t){let n=Qa(e.sell),o=d0(e),i=r=>()=>t(()=>fa({mould:e.file,name:e.name,formula:r,sell:n,slice:o}));return s`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${Ga("mould-sell",e.sell,r=>v(e,{sell:r}))}
      ${$$(e)?c0(e):u}
    </div>
    ${n?u:s`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(a.files?.formulas??[]).map(r=>s`<li>
            <button type="button" ?disabled=${!e.answer||!n} @click=${i(r.file)}>
              <b>${r.name}</b><span>${r.note||r.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function qr(){let{view:e,run:t,order:n,formula_of:o,formulas:i,mould:r,chosen_mould:l}=a;if(e!=="reading")return mn(e)?{name:e,file:t.file,of:t}:e==="moulds"&&r?{name:"describing",file:r.open.id,of:r}:e==="moulds"&&l?{name:"chosen",file:l.file,of:l}:e==="order"?{name:e,file:n?.open.file,of:n}:e!=="formula"?{name:e}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:Ji[o],file:t.file,of:t}}async function w$({name:e,file:t}){let n=ve();if(!(!(e===Ji.apart&&a.formulas.apart?.file===t)&&!await ha())&&n())try{await m0(e,t)}catch(i){if(!(i instanceof y||i instanceof SyntaxError))throw i;f({view:"runs",list_complaint:i.message})}}async function m0(e,t=""){let n=e;if(mn(n))return b$(t,n);let o=["pour","pipe"].find(i=>Ji[i]===e);if(o){await b$(t,"formula"),a.view==="formula"&&Xe(o);return}if(e===Ji.apart)return vr(t);if(e==="order")return kr(t);await f0(e,t)}async function b$(e,t){e===a.run.file||!e?f({view:a.run.file?t:"runs",typed:void 0}):await Lo(e,t)}async function f0(e,t){let n=e;Ac(),en(),f({view:it(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=Ns(Ye).find(i=>i.id===t);e==="describing"&&o&&await rl(o),e==="chosen"&&Hr(t),h0()}async function h0(){try{await wt(),da()}catch(e){if(!(e instanceof y))throw e;f({list_complaint:e.message})}}var ft={id:""},qe,Pc=!1,Mc=new Map,al=JSON.parse(sessionStorage.getItem("left")??"{}");function v$(){let e=qr();Pc||!e||qe&&Qt(qe)===Qt(e)||(ll(),k$(e))}function k$(e){let t=!qe||qe.name===e.name&&qe.of!==void 0&&qe.of===e.of;if(qe=e,t)return Ai();ft={id:crypto.randomUUID(),before:location.hash},Mc.set(ft.id,e.of),history.pushState(ft,"",Qt(e)),requestAnimationFrame(_0)}function Ai(){qe&&(ft.id||(ft={id:crypto.randomUUID()}),Mc.set(ft.id,qe.of),history.replaceState(ft,"",Qt(qe)))}var g0="button, input, select, summary, a[href], [tabindex]",Oc=e=>e.id||(e.getAttribute("aria-label")??e.textContent).trim(),x$=e=>[...document.querySelectorAll(`#main :is(${g0})`)].filter(t=>Oc(t)===e);function ll(){let e=document.activeElement;!e?.closest("#main")||e.id==="main"?al[ft.id]={scroll:scrollY}:al[ft.id]={scroll:scrollY,words:Oc(e),nth:x$(Oc(e)).indexOf(e)}}function _0(){scrollTo(0,0),document.activeElement?.closest("#main")||T$()}function T$(){let e=document.querySelector("#main h1");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}))}function R$(){let{scroll:e,words:t,nth:n=0}=al[ft.id]??{scroll:0},o=t===void 0?void 0:x$(t)[n];o?o.focus({preventScroll:!0}):T$(),scrollTo(0,e)}var ht=e=>S$({name:e,file:mn(e)?a.run.file:void 0});async function S$(e){ll(),await Bc(e,()=>{let t=qr();t&&!(qe&&Qt(qe)===Qt(t))&&k$(t)})}async function Bc(e,t){Pc=!0;try{await w$(e)}finally{Pc=!1,t()}}function D$(e){ft.before===Qt(e)?history.back():S$(e)}var y$=Promise.resolve();function $0(e,t){ll();let n=()=>history.state?.id!==e?.id;y$=y$.then(async()=>{if(!t)return Ai();if(n())return;let o=e?Mc.get(e.id):void 0,i=[a.run,a.formulas.apart,a.order].find(r=>r&&r===o);await Bc(i?{...t,file:"open"in i?i.open.file:i.file}:t,()=>{qe=qr(),!n()&&(ft=e??{id:crypto.randomUUID()},Ai(),requestAnimationFrame(R$))})})}function A$(){history.scrollRestoration="manual",addEventListener("popstate",e=>{am()||$0(e.state,Yl(location.hash))}),addEventListener("pagehide",()=>{ll(),sessionStorage.setItem("left",JSON.stringify(al))})}async function P$(){let e=Yl(location.hash);e&&(ft=history.state??{id:""});let t=ve();await dg(Pm(e)),e&&t()&&b0(e)&&await Bc(e,()=>{qe=qr(),Ai(),requestAnimationFrame(R$)}),await wd()}var b0=e=>!qe||Qt(qe)===Qt(e);function Pi(e=a.plan?"The figures below are out of date.":"No figures yet."){let t=za()?void 0:a.complaint;return s`<div class="complaints" role="status">
      ${t?s`<p class="alarm">
                <strong>${e}</strong>
                ${Dn(t.field)}${H(t)}
              </p>
              ${t.is_fault?s`<button type="button" @click=${Cc}>Ask again</button>`:u}
              ${xt("run")?Er(a.run.now,t.keep,(n,o)=>Z("run",n,o)):Fc(t)}
              ${w0()?s`<button type="button" @click=${Lc}>Go to the field</button>`:u}`:u}
    </div>
    ${Cr()}`}function Fc({keep:e}){let{studio:t}=a.beside;return t&&xt("studio")?Er(t.now,e,(n,o)=>Z("studio",n,o)):u}function Dn(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function Cc(){ce(),a.run.failed&&Zt()}function w0(){if(O$())return!0;let e=nn();return e?document.activeElement!==e:y0()}var y0=()=>a.view!=="set-up"&&xt("run")&&a.complaint!==void 0&&a.complaint.field!=="",O$=()=>["pour","pipe"].find(e=>a.complaint?.file&&a.complaint.field&&xt(e));function Lc(){let e=nn(),t=O$();if(e)return Ke(e);t?Xe(t):ht("set-up"),v0(()=>Ke(nn()))}function v0(e){requestAnimationFrame(()=>requestAnimationFrame(e))}var M$=()=>[...Ws().map(e=>sn(e)),...Is().map(an)];function B$(){let e=a.formula_of,t=a.formulas[e];if(!t)return s`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${M$()}${Pi()}
      <p>Reading the formula ...</p>
      ${Wc(e)}`;let n=a.plan&&xi(a.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return s`${M$()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"Unnamed formula")}</h1>
    <p class="aside">${k0(e)}</p>
    <div class="choice">${Wc(e)}${e==="apart"?x0():u}</div>
    ${Ti(a.files?.formulas.find(i=>i.file===t.file))} ${T0(e,o,n)} ${C$(e)}
    ${sc(e)} ${ac(e,o)} ${uc(e)} ${ec(e)}
    <div class="choice">${Wc(e)}</div>`}var F$=e=>[C$(e),sc(e),ac(e,void 0),uc(e),ec(e)],Ic=()=>String(a.run.now.name??a.run.file);function k0(e){let t=a.formulas[e],n=t.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===t&&a.formulas.pipe===t;return e==="apart"?`Opened on its own; the figures are for a base of "${Ic()}".${n}`:o?`Base and topping of "${Ic()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${Ic()}".${n}`}function Wc(e){let t=e==="apart";return s`<button type="button" class="strong" @click=${()=>D$(t?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${t?"Close the formula":"Back to the run"}
  </button>`}function x0(){return s`<button type="button" @click=${()=>{yd("pour")}}>Use it as the base</button> ${pt()?s`<button type="button" @click=${()=>{yd("pipe")}}>Use it as the topping</button>`:u}`}function T0(e,t,n){return s`<section class="strip" aria-label="What comes of it">
    ${t&&n?s`<dl>
            ${[...R0(e,n),...S0(e,t)].map(([o,i,r])=>s`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${r?no(r):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${D0(e)}
  </section>`}function R0(e,t){let n=e==="pipe"?Vd(t,t.whippings[0]):"";return n?[["For one whipping",n]]:He(t.whole)?[["For one batch",qt(t.whole,t.batch)]]:[]}function S0(e,t){let n=Xn(e).length?" \u26A0":"";return[["Fats",O(j(a.units,t.fats_g))],["Superfat as weighed",`${et(t.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...Na(t).map(({one:o})=>[o.name,O(qo(a.units,o))])]}function D0(e){let t=za()?void 0:a.complaint;if(!t)return s`<div role="status"></div>
      ${Cr()}`;let n=xt(e),o=n&&t.field!==""&&document.activeElement!==nn();return s`<div role="status" class="asks">
      <p class="alarm">
        <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${Dn(t.field)}${H(t)}
      </p>
      ${t.is_fault?s`<button type="button" @click=${Cc}>Ask again</button>`:u}
      ${o?s`<button type="button" @click=${()=>nn()?.focus()}>Go to the field</button>`:u}
    </div>
    ${Cr()}`}function C$(e){return s`<section class="card" aria-label="Name">
    ${h({label:"Name",of:e,at:"/name",wide:!0})}
    ${A({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>h({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Ec=e=>v(a.new_formula,e);function L$(){let{name:e,copied:t}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,r)=>Number(i.shipped)-Number(r.shipped)),o=i=>()=>de(async()=>{await i(e.trim()),Ec({name:"",copied:""})});return s`${Rt("Formulas")}
    <section aria-label="Formulas">
      ${Ut(n,A0)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${M(e)}
            @input=${i=>Ec({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e.trim()} @click=${o(pg)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>Ec({copied:i.target.value})}
          >
            <option value="" .selected=${M(t==="")}>choose ...</option>
            ${n.map(i=>s`<option value=${i.file} .selected=${M(i.file===t)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!e.trim()||!t}
          @click=${o(i=>mg(t,i))}
        >
          Make the copy
        </button>
      </div>
      ${e.trim()?"":s`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${St("formula")}`}function A0(e){let t=e.changed?[`changed ${oe(e.changed)}`]:[];return ln({kind:xo,one:e,facts:t,open:()=>vr(e.file)})}function P0(e){en(),Hr(e,`Saved in ${e}.`)}function I$(){let{chosen_mould:e}=a;return s`${Rt("Moulds")}
  ${e?_$(e,de):h$(P0)??s`${F0()} ${O0()}`}`}function O0(){let e=(a.files?.moulds??[]).filter(n=>!n.shipped),t=a.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return s`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Ut([...e,...t],M0)} ${St("mould")}
  </section>`}function M0(e){let t=e.shipped?B0(e.file):I0(e.file),n=()=>Promise.resolve(Hr(e.file));return ln({kind:Ye,one:e,facts:t,picture:e.file,open:n})}var B0=e=>a.catalogue.filter(t=>t.path===e).map(t=>`${O(Oe(a.units,t.brimful_ml))}, ${V(t.cavities,"cavity","cavities")}; ${t.description}`);function F0(){return s`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${C0()}
    <div class="choice">
      ${Object.entries(il).map(([e,t])=>s`<button type="button" @click=${()=>m$(e)}>${t}</button>`)}
    </div>
  </section>`}function C0(){return Ns(Ye).map(e=>{let t=String(we(e.text)?.name??"").trim()||L0(e)||"a mould without a name yet";return s`<div class="banner">
      <p>Your unsaved mould <b>${t}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>de(()=>rl(e))}>Continue</button>
        <button type="button" @click=${()=>{In(Ye,e.id),Q()}}>Discard it</button>
      </div>
    </div>`})}var L0=({file:e})=>a.files?.moulds.find(t=>t.file===e)?.name;function I0(e){let t=hd(e);return t?"complaint"in t?[`it cannot be measured: ${t.complaint}`]:[O(Oe(a.units,t.brimful_ml)),V(t.cavities,"cavity","cavities")]:["measuring ..."]}var W0=300,E0=1e3;function ul(){let{quoted:e,plan:t,quote_wish:n,is_old:o}=a,i=e?.of===t&&e?.wish===n;!i&&!o&&N0();let r=i?e?.complaint:void 0;return{quote:e?.quote,complaint:r,is_old:o||!i||r!==void 0}}function jc(){a.quoted&&f({quoted:{...a.quoted,of:void 0}})}var Ur,Nc=!1;function N0(){let{plan:e,quote_wish:t}=a;Nc||Ur?.of===e&&Ur?.wish===t||(window.clearTimeout(Ur?.timer),Ur={of:e,wish:t,timer:window.setTimeout(()=>{H0()},a.quoted?W0:0)})}var dl=e=>e.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function W$(e,{numbers:t="",by:n,figure:o}){let i=dl(t);return{...e,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var cl=()=>W$({file:a.run.file,run:a.run.now},a.quote_wish);function j0(e,{numbers:t=""}){return e.field==="/sell"&&dl(t)?{...e,file:"",field:"sell"}:e}async function H0(){Ur=void 0;let{run:e,plan:t,planned:n,quote_wish:o,is_old:i}=a;if(!(!t||!n||i)){Nc=!0;try{let r=await $m(W$(n,o));e===a.run&&f({quoted:{of:t,wish:o,quote:r}})}catch(r){if(!(r instanceof y))throw r;if(e!==a.run)return;let l=j0(r.complaint,o);f({quoted:{of:t,wish:o,quote:a.quoted?.quote,complaint:l}}),r.may_pass&&window.setTimeout(jc,E0)}finally{Nc=!1}}}var q0=300,U0=1e3,qc=e=>{let{by:t,figure:n}=a.quote_wish;return[e.open.now,e.open.file,e.times,t,n,a.plan,Po()]},E$=(e,t)=>e!==void 0&&e.every((n,o)=>n===t[o]);function N$(){let e=Ee(),{quoted:t}=e;if(!bn(e.open.now)||e.open.theirs)return{is_old:!0};let n=E$(t?.of,qc(e));!n&&!a.is_old&&z0(e);let o=n?t?.complaint:void 0;return{quote:t?.quote,complaint:o,is_old:a.is_old||!n||o!==void 0}}function Uc(){let{quoted:e}=Ee();e&&v(Ee(),{quoted:{...e,of:[]}})}function zc({open:e,times:t}){let{by:n,figure:o}=a.quote_wish,i=dl(t);return{file:e.file,order:e.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var pl,Hc=!1;function z0(e){let t=qc(e);Hc||E$(pl?.of,t)||(window.clearTimeout(pl?.timer),pl={of:t,timer:window.setTimeout(()=>{J0(e)},e.quoted?q0:0)})}async function J0(e){if(pl=void 0,e===a.order){Hc=!0;try{if(await Xt(),await Ft(),await ii(),!bn(e.open.now))return;let t=qc(e);await K0(e,t)}catch(t){if(!(t instanceof y))throw t}finally{Hc=!1,v(e,{})}}}async function K0(e,t){try{v(e,{quoted:{of:t,quote:await bm(zc(e))}})}catch(n){if(!(n instanceof y))throw n;v(e,{quoted:{of:t,quote:e.quoted?.quote,complaint:n.complaint}}),n.may_pass&&window.setTimeout(()=>e===a.order&&Uc(),U0)}}var Oi={of:"order",at:"/lines",in_order:!0,stays:!0};function j$(){return s`<section class="card" aria-label="The order">
    <div class="row">
      ${h({of:"order",label:"For",at:"/for",optional:!0})}
      ${h({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${h({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${I("order","/lines")} ${k(Oi).map((e,t)=>V0(t))} ${Q0()}
  </section>`}var H$=()=>(a.files?.runs??[]).filter(({shipped:e})=>!e);function q$(e){let t=gn(Ee().open.file,e);return a.files?.runs.find(n=>n.file===t)}var U$=e=>q$(e)?.name||e;function z$(e){let t=Nn(Ee().open.now).map(({run:n})=>n);return H$().filter(({file:n})=>n===e||!t.includes(n)).map(n=>[n.file,n.name||n.file])}function V0(e){let{run:t}=Nn(Ee().open.now)[e]??{run:""},n=`/lines/${e}`,o=q$(t)?.pieces,i=t?U$(t):`line ${e+1}`;return s`<div class="row" id=${C(Oi,e)} role="group" aria-label=${i}>
    ${$e({of:"order",label:"Run",at:`${n}/run`,answers:z$(t),unsaid:"choose ..."})}
    ${h({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${V(o,"piece")}`})}
    ${k(Oi).length>1?h({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):u}
    ${U(Oi,e,i)}
  </div>`}function Q0(){let e=z$();return H$().length?e.length?s`<div class="row">
    ${$e({of:"order",label:k(Oi).length?"Another run":"The run that is ordered",at:"/lines/-",answers:e,unsaid:"choose ...",optional:!0,chosen:"",take:t=>t&&N(Oi,{run:t},U$(t))})}
  </div>`:s`${u}`:s`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}var G0=300,Y0=1e3,J$=()=>new Date().toDateString(),Z0=()=>({file:a.run.file,run:a.run.now});function X0(){let{run:e,plan:t}=a;return{known:a.run_days,rests_on:()=>[a.plan,J$()],is_ready:t!==void 0&&!a.is_old,written:()=>Promise.resolve(),question:()=>a.planned??Z0(),is_open:()=>e===a.run,keep:n=>f({run_days:n})}}function eS(){let{order:e}=a;if(!e)return;let{open:t}=e;return{known:e.days,rests_on:()=>[t.now,t.file,a.plan,Po(),J$()],is_ready:bn(t.now)&&!t.theirs&&!a.is_old,written:async()=>{await Xt(),await Ft(),await ii()},question:()=>({file:t.file,order:t.now}),is_open:()=>e===a.order,keep:n=>v(e,{days:n})}}var ml=e=>e==="run"?X0():eS(),K$=e=>ml(e).question(),V$=(e,t)=>e!==void 0&&e.length===t.length&&e.every((n,o)=>n===t[o]);function fl(e){let t=ml(e);if(!t)return{is_old:!0};let{known:n,is_ready:o}=t,i=V$(n?.of,t.rests_on());!i&&o&&tS(e,t);let r=i?n?.complaint:void 0;return{days:n?.days,complaint:r,is_old:!o||!i||r!==void 0}}function Vc(e){let t=ml(e);t?.known&&t.keep({...t.known,of:[]})}var Jc=new Map,Kc=new Set;function tS(e,t){let n=t.rests_on(),o=Jc.get(e);Kc.has(e)||V$(o?.of,n)||(window.clearTimeout(o?.timer),Jc.set(e,{of:n,timer:window.setTimeout(()=>{nS(e)},t.known?G0:0)}))}async function nS(e){Jc.delete(e);let t=ml(e);if(t?.is_ready){Kc.add(e);try{await t.written(),await oS(e,t)}catch(n){if(!(n instanceof y))throw n}finally{Kc.delete(e),f({})}}}async function oS(e,{known:t,rests_on:n,question:o,is_open:i,keep:r}){let l=n();try{let d=await wm(o());i()&&r({of:l,days:d})}catch(d){if(!(d instanceof y))throw d;if(!i())return;r({of:l,days:t?.days,complaint:d.complaint}),d.may_pass&&window.setTimeout(()=>i()&&Vc(e),Y0)}}var Xc=864e5,ao=e=>Math.round(Date.parse(`${e}T00:00Z`)/Xc),Q$=e=>new Date(e*Xc).toISOString().slice(0,10),iS=e=>new Date(e*Xc).getUTCDay()===1,Gc=40,Yc=18,rS=7,Zc=class{#n;#e;constructor({calendar:t}){this.#n=ao(t[0].day),this.#e=t.length}at=(t,n=0)=>`${this.#t(ao(t)+n)}%`;wide=t=>`${(100*t/this.#e).toFixed(3)}%`;#t=t=>(100*(t-this.#n)/this.#e).toFixed(3);mondays(){let t=Array.from({length:this.#e},(n,o)=>this.#n+o).filter(iS);return t.filter((n,o)=>o%Math.ceil(t.length/rS)===0).map(Q$)}is_at_end=t=>ao(t)-this.#n>.88*this.#e};function G$(e){let t=new Zc(e),{calendar:n}=e;return s`<figure class="day-strip">
    <p class="aside">${Re(n[0].day)} to ${Re(n.at(-1).day)}</p>
    ${Qc(e,t,20,uS(t))}
    <p>Hours of your making days</p>
    ${Qc(e,t,Gc+2,dS(e,t))}
    ${e.batches.map(o=>s`<p>${hS(e,o)}</p>
          ${Qc(e,t,Yc+6,cS(e,t,o))}`)}
    <figcaption>${_S(e)}</figcaption>
  </figure>`}var Qc=(e,t,n,o)=>s`<svg width="100%" height=${n} aria-hidden="true">
    ${S`${sS} ${lS(e,t)}
      ${t.mondays().map(i=>S`<line class="week" x1=${t.at(i)} x2=${t.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${aS(e).map(i=>S`<line class="due" x1=${t.at(i)} x2=${t.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,sS=S`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,aS=({days:e})=>e.filter(({acts:t})=>t.some(({act:n})=>n==="due")).map(({day:t})=>t),lS=({calendar:e},t)=>e.filter(({off:n})=>n).map(({day:n})=>S`<rect class="off" x=${t.at(n)} width=${t.wide(1)} height="100%" />`),uS=e=>e.mondays().filter(t=>!e.is_at_end(t)).map((t,n)=>S`<text class=${n%2?"between":""} x=${e.at(t)} dx="3" y="14">${jg(t)}</text>`);function dS({calendar:e},t){let n=Math.max(...e.map(({hours_min:i})=>i)),o=(i,r,l)=>{let d=Gc*l/n;return S`<rect class=${i} x=${t.at(r,.1)} width=${t.wide(.8)} y=${1+Gc-d} height=${d} />`};return e.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:r,used_min:l})=>S`${o("free",i,r)} ${o("used",i,l)}`)}function cS(e,t,n){let{poured:o,unmoulded:i,cured:r}=n,l=(p,m,_)=>{let b=ao(_)-ao(m);return S`<rect class=${p} x=${t.at(m)} y="3" width=${t.wide(b)} height=${Yc} />`},d=o===i,c=(p,m)=>fS(e,p,n).map(_=>S`<circle class=${p} cx=${t.at(_,.5)} cy=${3+Yc/2} r=${m} />`);return S`${l("mould",o,d?Q$(ao(o)+1):i)}
    ${ao(i)<ao(r)?l("cure",i,r):u}
    ${c("chill",7)} ${c("cast",3.5)}`}var pS=({of:e,runs:t,batches:n},o)=>e===o.of&&t.join()===o.runs.join()&&n.includes(o.batch),mS=({lyes:e},t)=>e.filter(({batches:n})=>n.some(({of:o,runs:i,batch:r})=>o===t.of&&i.join()===t.runs.join()&&r===t.batch)).map(({made:n})=>n);function fS(e,t,n){let o=e.days.filter(({acts:i})=>i.some(r=>r.act===t&&pS(r,n)));return[...new Set([...o.map(({day:i})=>i),...t==="chill"?mS(e,n):[]])]}function hS({asked:e,batches:t},n){let o=({of:l,runs:d})=>l===n.of&&d.join()===n.runs.join(),i=e[n.of].lines.find(({runs:l})=>l.join()===n.runs.join())?.name??"",r=t.filter(o).length;return`${i}${r>1?`, batch ${n.batch} of ${r}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var gS=(e,t)=>s`<span><svg width="26" height="20" aria-hidden="true">${e}</svg> ${t}</span>`,zr=e=>S`<rect class=${e} x="1" y="1" width="24" height="18" />`;function _S({calendar:e,days:t}){let n=i=>t.some(({acts:r})=>r.some(({act:l})=>l===i));return[[!0,zr("used"),"hours used"],[!0,zr("free"),"hours free"],[!0,zr("mould"),"in the mould"],[!0,zr("cure"),"curing"],[e.some(({off:i})=>i),zr("off"),"day off"],[n("cast"),S`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),S`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out the evening before"],[!0,S`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,r])=>gS(i,r))}var Uo=e=>["/work",e].join("/");function hl(e=!1){let t=(n,o,i,r=!1)=>h({of:"studio",label:o,at:Uo(n),unit:i,optional:!0,takes_part:!0,is_due:r,short:!0});return[t("each_batch","Each batch","min",e),t("each_piece_made","Each piece made","s"),t("each_tray_fill","Each tray fill","min"),t("each_piece_packed","Each piece packed","s")]}var $S=({cautions:e})=>e.filter(({severity:t})=>t!=="danger").map(({severity:t,text:n})=>t==="note"?s`<p>${vt(n)}</p>`:s`<p class="minded"><strong>Caution</strong> ${vt(n)}</p>`),Jr=(e,t,n="")=>s`<tr>
    <th scope="row">${e}</th>
    <td><b>${O(t)}</b></td>
    <td>${n}</td>
  </tr>`;function bS(e){let{units:t}=a,{made:n,for:o,lye_of:i,pot:r}=e,l=r.full_pot_g===null?"":`with its pot ${O(te(t,{g:r.full_pot_g,g_text:r.full_pot_g_text,oz_text:r.full_pot_oz_text}))}`;return s`<h3>One pot of lye solution, made on the evening of ${Re(n)}</h3>
    <p>
      For ${i==="topping"?"the toppings of ":""}${vt(o)};
      ${R(r.strength_percent,1)} % strong. In place of the lye in the plan of each.
    </p>
    <table class="figures">
      <tbody>
        ${Jr("Water, distilled",te(t,he(r,"water_")))}
        ${r.alkalis.map(d=>Jr(d.name,te(t,he(d,""),"down")))}
        ${Jr("Lye solution in the pot",te(t,he(r,"lye_")),l)}
        ${r.shares.map(d=>s`${Jr(`Out of it for ${d.batter}`,te(t,he(d,"lye_"),"down"),`superfat then ${et(d.superfat_percent)}`)}
            ${d.top_up_g>0?Jr(`and plain water to ${d.batter}`,te(t,he(d,"top_up_"))):u}`)}
      </tbody>
    </table>
    ${$S(e)}`}var Y$=({lyes:e})=>e.map(bS),Z$=({lyes:e,notes:t})=>[...new Set([...e.flatMap(({cautions:n})=>n),...t].filter(({severity:n})=>n==="danger").map(({text:n})=>n))];var zo=e=>v(a.printing,e);function X$(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function eb(e){if(!a.printing.is_working){zo({is_working:!0,told:"Making it ...",on:a.view});try{await wS(),zo({told:await e()})}catch(t){zo({told:t instanceof Error?t.message:String(t)})}zo({is_working:!1})}}async function wS(){await Xt(),await Ft();let e=a.view==="order"?a.order?.open:void 0,t=$n("run")??(e?.theirs&&e);if(t)throw new Error(`${t.file} was changed outside this page: choose first which version to keep.`)}var lo=()=>a.printing.on===a.view?a.printing.told:"",tt=(e,t)=>()=>eb(async()=>{let n=URL.createObjectURL(await Vt(t));return X$(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),yS=e=>()=>eb(async()=>(X$(await Tm(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),vS=e=>{zo({paper:e}),localStorage.setItem("paper",e)},gl=()=>ue("Paper",a.printing.paper,[["A4","A4"],["Letter","Letter"]],vS),Qe=(e,t,n="",o=!1)=>s`<button
    type="button"
    class=${n}
    ?disabled=${a.printing.is_working||o}
    @click=${()=>{t()}}
  >
    ${e}
  </button>`,dn=({words:e,kind:t,file:n,of:o,is_asleep:i},r="")=>s`${Qe(`${e}, to print`,yS({kind:t,...o}),r,i)}
  ${a.files?.makes_pdf?Qe(`${e}, PDF`,tt(`${n}.pdf`,{kind:`${t}-pdf`,...o}),"",i):""}`,uo=e=>e.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var cn={run:"/money/currency",studio:"/currency"},_l={run:"/money/prices",studio:"/prices"},zt=()=>on(cn)!==void 0;function Mi(){let[e,t]=[g("run",cn.run),g("studio",cn.studio)];return e!==void 0&&t!==void 0&&e!==t?[]:[cn,_l]}var $l=()=>D("studio",cn.studio)||String(on(cn)??"");async function tb(e,t=""){if(e==="run"||!a.order)return;let{open:n}=a.order,o=Nn(n.now).map(({run:r})=>gn(n.file,r)),i=o.find(r=>bl(r,t))??o[0];(!o.includes(a.run.file)||o.some(r=>bl(r,t)))&&await Lo(i,"set-up")}var bl=(e,t)=>e!==""&&(e===t||t.endsWith(`/${e}`)),nb=e=>{requestAnimationFrame(()=>requestAnimationFrame(e))};function Kr(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(J(e,n));if(o)return o}}var ob=(e,t)=>{le("set-up studio"),je("studio",e),ht("set-up"),nb(()=>Ke(Kr("studio",t)))};async function ib(e){await tb(e),se()||await Vs(),ob("days","/days/making/monday")}var kS=["order","run","pour","pipe","studio"];async function ep(e,{file:t,field:n}){if(e==="order"&&bl(a.order.open.file,t))return Ke(Kr("order",n));await tb(e,t);let o=kS.find(i=>bl(zn(i)?.file??"",t));if(o==="pour"||o==="pipe")Xe(o);else{if(o==="studio")return ob(n.startsWith("/work")&&zt()?"money work":"days",n);if(Kr("run",n))return Ke(Kr("run",n));ht("set-up")}nb(()=>Ke(Kr(o??"run",n)))}function wl(e){let{days:t,complaint:n,is_old:o}=fl(e);return s`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?xS(e,n):u}
    ${t?s`<div class=${o?"old":""}>${TS(e,t)}</div>
            ${LS(e,o)}`:n?u:s`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function xS(e,t){let{field:n,is_fault:o}=t;return o?s`<p class="alarm" role="status">${H(t)}</p>
      <button type="button" @click=${()=>Vc(e)}>Ask again</button>`:["/days","/days/making"].includes(n)||e==="run"&&!se()?s`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{ib(e)}}>To my making days</button>`:["/work",Uo("each_batch")].includes(n)?s`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{ep(e,{...t,field:Uo("each_batch")})}}
      >
        To the time of a batch
      </button>`:s`<p class="alarm" role="status">${Dn(n)}${vt(H(t))}</p>
    ${n?s`<button type="button" @click=${()=>{ep(e,t)}}>Go to the field</button>`:u}`}var TS=(e,t)=>s`${FS(t)} ${RS(e,t)} ${G$(t)} ${AS(e,t)} ${Y$(t)} ${MS(t)}
  ${BS(t)} ${CS(t)}`,tp=(e,t,n)=>s`<small>${e?t:n}</small>`;function RS(e,t){let{kept:n,promise:o,promise_proved:i,from:r}=t;return n===null?s`<p class="when">
        Begun today, ${Re(r)}, promise it for <b>${Re(o)}</b>.
        ${tp(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>Ke(document.getElementById(J(e,"/due")))}>
        Give it a due day
      </button>`:n?SS(t):DS(t)}function SS({asked:e,latest_start:t,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:r,pieces:l,last_making_day:d}]=e;return s`<p class="when">
      Begin on <b>${Re(t)}</b> at the latest to have ${V(l,"piece")} by
      <b>${Re(r)}</b>.
      ${tp(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${d?s`<p>The last day to pour any of it is ${Re(d)}.</p>`:u}
    <p>
      Begun today, all of it can be ready by ${Re(o)}.
      ${i?u:s`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function DS({asked:e,in_time_proved:t}){let n=({pieces:o,in_time:i,due:r,rest_on:l})=>i?s`${i} of ${V(o,"piece")} by ${Re(r)}, the rest on <b>${Re(l)}</b>.`:s`none of the ${V(o,"piece")} by ${Re(r)}, all of them on <b>${Re(l)}</b>.`;return s`${e.filter(({kept:o})=>o===!1).map(o=>s`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${tp(t,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var AS=(e,{days:t})=>s`<details ?open=${e==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${t.map(n=>s`<li>
            <h3>${Re(n.day)} <small>${PS(n)}</small></h3>
            <ul>
              ${n.acts.map(OS)}
            </ul>
          </li>`)}
    </ol>
  </details>`,PS=({hours_min:e,used_min:t,off:n})=>n?"day off":e&&t?`${Ta(t)} of ${Ta(e)}`:"",OS=({text:e,min:t,caution:n})=>s`<li>
    ${vt(e)}${t?s` <small>${Ta(t)}</small>`:u}
    ${n?s`<p class="minded"><strong>Caution</strong> ${n}</p>`:u}
  </li>`;function MS({what_if:e,kept:t}){if(!e.length)return s`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:r,proved:l})=>[o&&!t?"keeps the due day, ":"",o?`begin on ${Re(i)} at the latest`:`ready by ${Re(r)}`,l?"":" (the search ended there)"].join("");return s`<h3>${t===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${e.map(o=>s`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function BS({extras:e}){return e.length?s`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${e.map(({run:t,batch:n,mould:o,cavities:i})=>s`<li>Batch ${n} of ${t} fills ${V(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:u}function FS(e){let t=Z$(e);return t.length?s`<div class="dangers">
    ${t.map(n=>s`<p class="danger"><strong>${ut}</strong> ${vt(n)}</p>`)}
  </div>`:u}function CS({notes:e}){let t=e.filter(({severity:o})=>o!=="danger"),n=({severity:o,text:i})=>o==="note"?s`<p>${vt(i)}</p>`:s`<p class="minded"><strong>Caution</strong> ${vt(i)}</p>`;return t.length?s`<h3>To mind</h3>
        ${t.map(n)}`:u}function LS(e,t){let n=K$(e),o=uo(n.file),i={plan:n,paper:a.printing.paper,"with-days":!0};return s`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${Qe("Calendar file (.ics)",tt(`${o} days.ics`,{kind:"calendar",days:n}),"",t)}
      ${dn({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:t})}
      ${Qe("Table of the days (.csv)",tt(`${o} days.csv`,{kind:"days-csv",days:n}),"",t)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    <p role="status">${lo()}</p>
  </section>`}var Jo=e=>(t,n,o="")=>s`<tr class=${o}>
      <th scope="row">${t}</th>
      ${e.map(i=>s`<td><b>${n(i)}</b></td>`)}
    </tr>`,Vr=(e,t)=>s`<tr class="group">
    <th scope="rowgroup" colspan=${t.length+1}>${e}</th>
  </tr>`;function Qr(e,t,n,o){let i=`quote ${t}`,r=a.open.has(i),l=`quote-${t.replaceAll(/\W/g,"-")}`,d=s`<button
    type="button"
    class="line"
    aria-expanded=${r?"true":"false"}
    aria-controls=${r?l:u}
    @click=${()=>Ue("open",i)}
  >
    ${t}<span class="how" aria-hidden="true">${r?"\u2013":"="}</span>
  </button>`;return s`${Jo(e)(d,n)}
  ${r?s`<tr class="opened">
          <td colspan=${e.length+1} id=${l}>${e.map(o)}</td>
        </tr>`:u}`}var Gr=(e,t)=>s`<div class="sum">
    <table>
      <caption>
        ${e}
      </caption>
      <tbody>
        ${t}
      </tbody>
    </table>
  </div>`;function yl({parts:e,items:t},n){let o=e.find(i=>i.part===n);return o?t.some(i=>i.part===n&&i.cost!==null&&!i.from_tap)?o.each:"unpriced":"\u2013"}var vl=(e,{items:t},n)=>Gr(e,t.filter(o=>o.part===n).map(({name:o,amount:i,cost:r,how:l})=>s`<tr>
            <th scope="row">${o}</th>
            <td>${r??"unpriced"}</td>
            <td>${l||i}</td>
          </tr>`)),kl=(e,t)=>Qr(e,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>s`${IS(t(n),n.cash)} ${WS(n.cash)}`),IS=(e,t)=>s`${Gr(`Packs to buy, ${e}`,(t?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:r,seller:l})=>s`<tr>
          <th scope="row">${n}</th>
          <td>${r}</td>
          <td>${o} × ${i}${l?`, ${l}`:""}</td>
        </tr>`))}
  ${t?.unpriced.length?s`<p class="alarm">No pack is listed, and not in the sum: ${t.unpriced.join(", ")}.</p>`:u}
  ${t&&!t.proved_cheapest?s`<p class="hint">Not proved to be the least that is possible.</p>`:u}`,WS=e=>Gr("Left of them when all is made",(e?.left??[]).map(({shown_as:t,left:n})=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`));function Yr(e){let t=e.flatMap(({prices:n})=>n);return t.filter((n,o)=>t.findIndex(({way:i})=>i===n.way)===o)}var rb=e=>`${R(e,1)} %`;function ES(e){return"margin_percent"in e?`margin ${R(e.margin_percent,2)} %`:"markup_percent"in e?`markup ${R(e.markup_percent,2)} %`:"price as set"}var np=(e,t)=>({prices:n})=>{let o=n.find(i=>i.way===e);return o?t(o):"\u2013"};function xl(e,t,{way:n,by:o,ask:i,with_tax:r},l,d=u){let c=i===r,p=Jo(e),m=b=>np(n,b),_=(b,w)=>l?s`${w} ${no(b)}`:w;return s`<tbody>
    ${Vr(s`<span class="way">${n}</span>, ${ES(o)}`,e)} ${d}
    ${p(t?c?"Ask, with tax":"Ask, without tax":"Ask",m(op),"ask")}
    ${t?p("tax in it",m(({tax:b})=>c?b:"none")):u}
    ${p("fees",m(({fees:b})=>b))}
    ${p("left for you",m(({profit:b})=>b))}
    ${p(_("margin","margin, of the price"),m(b=>rb(b.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m(b=>rb(b.markup_percent)))}
  </tbody>`}var op=({ask:e,is_below_cost:t})=>t?s`<span class="below">${e}<small>below cost</small></span>`:e;function Tl(e,t){let n=o=>e.filter(({prices:i})=>i.some(r=>r.way===o&&r.is_below_cost));return Yr(e).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>s`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${t(i)}
        </p>`)}var ip=e=>e===1?"once":`${e} times`;function sb({times:e,currency:t,has_tax:n},o){let i=Jo(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${e.map(r=>s`<th scope="col"><b>${ip(r.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:r})=>r)}
        </tbody>
        <tbody>
          ${Vr("It costs",e)} ${e[0].lines.map((r,l)=>NS(e,l))}
          ${i("The whole order",({cost:r})=>r,"sum-of")}
        </tbody>
        <tbody>
          ${kl(e,r=>`made ${ip(r.times)}`)}
        </tbody>
        ${Yr(e).map((r,l)=>xl(e,n,r,l===0,qS(e,r.way)))}
      </table>
    </div>`}var rp=({run:e,sell:t})=>`${e??""}, ${t} ${t===1?"piece":"pieces"}`,NS=(e,t)=>Qr(e,rp(e[0].lines[t]),({lines:n})=>n[t].cost,({lines:n})=>s`${jS(n[t])} ${n[t].parts.map(({part:o})=>HS(n[t],o))}`),jS=e=>Gr(`A piece of ${rp(e)}, ${e.make} made`,[...e.parts.map(({part:t})=>[t,yl(e,t)]),["Cost of a piece",e.cost_each]].map(([t,n])=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`)),HS=(e,t)=>vl(`${t} of all of them, ${rp(e)}`,e,t),qS=(e,t)=>e[0].lines.map(({run:n},o)=>Jo(e)(`${n??""}, a piece`,({lines:i})=>np(t,op)(i[o]))),ab=({times:e})=>Tl(e,t=>`the order loses money, made ${t.map(n=>ip(n.times)).join(", ")}.`);function lb({times:e}){let t=e.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=e.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:r})=>r.map(l=>`${i??""}: ${l}`)));return n.push(...t.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?s`<div class="dangers">
    ${[...new Set(n)].map(o=>s`<p class="danger"><strong>${ut}</strong> ${o}</p>`)}
  </div>`:u}function ub({times:e,remarks:t=[]}){let[{together:n,lines:o}]=e,i=n.flatMap(({cautions:r})=>r).filter(({severity:r})=>r!=="danger");return!n.length&&!t.length?u:s`<ul class="limits">
    ${n.map(r=>s`<li>
          <b
            >Poured together (${r.word}): ${Ie(r.lines.map(l=>o[l].run??""))} from one base,
            "${r.formula}", ${O(j(a.units,r.make_g))} in
            ${V(r.batches.reduce((l,{count:d})=>l+d,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:r})=>s`<li>${r}</li>`)} ${t.map(r=>s`<li>${r}</li>`)}
  </ul>`}function US(e){return e.length<2?e[0]?.way:e.find(({way:t})=>t===a.printing.way)?.way}function Rl({file:e,question:t,prices:n,is_old:o}){let i=uo(e),r=US(n),l={quote:n.length>1&&r?{...t,way:r}:t},d=n.map(p=>[p.way,p.way]),c={buy:{files:[e]}};return s`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${d.length>1?s`<p class="question">The price that is offered</p>
            ${ue("The price that is offered",r,d,p=>v(a.printing,{way:p}))}`:u}
    <div class="choice">
      ${n.length?dn({words:"Offer",kind:"offer",file:`${i} offer`,of:l,is_asleep:o||!r}):u}
      ${dn({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:t}})}
      ${a.files?.studios.length?s`${dn({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${Qe("Shopping list, table",tt(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:u}
    </div>
    ${n.length?r?u:s`<p class="hint">An offer has one price: choose which.</p>`:s`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${lo()}</p>
  </section>`}var sp=class extends HTMLElement{#n;#e="";#t="";#i="";#o=new IntersectionObserver(([t])=>t.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#r()}disconnectedCallback(){this.#o.disconnect(),this.#s()}set words(t){this.#e=t}set question(t){JSON.stringify(t)!==JSON.stringify(this.#n)&&(this.#n=t,this.#s(),this.#a(),this.#r())}#r(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#s(){this.#t&&URL.revokeObjectURL(this.#t),[this.#t,this.#i]=["",""]}async#l(){this.#o.disconnect();let t=this.#n,[n,o]=await zS(t);if(t!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#t,this.#i]=[n,o],this.#a()}#a(){let t=this.#i||"Drawing ...";_t(this.#t?s`<img src=${this.#t} alt=${this.#e} />`:s`<p class="hint">${this.#n?t:u}</p>`,this)}};async function zS(e){try{return[URL.createObjectURL(await Vt({kind:"picture",quote:e})),""]}catch(t){if(!(t instanceof y))throw t;return["",t.message]}}customElements.define("cost-picture",sp);function db(e,t){let{costs:n,currency:o}=e;if(!n.length)return u;let[i,r]=[n[0],n.at(-1)],l=({sell:d,each:c})=>`${c} ${o} at ${d}`;return s`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${l(i)} to ${l(r)}, and where the money of a piece goes. The figures stand below.`}
        class=${t?"old":""}
        .question=${t?Ce:cl()}
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
          ${JS(e).map(({sell:d,each:c})=>s`<tr>
                <th scope="row">${d}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function JS({costs:e,numbers:t,steps:n}){let o=new Set([...t.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),e[0].sell,e.at(-1).sell]);return e.filter(({sell:i})=>o.has(i))}var cb=({sell:e})=>`${e} to sell`;function pb({numbers:e,currency:t,has_tax:n},o){let i=Jo(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${e.map(r=>s`<th scope="col"><b>${r.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("to make",r=>r.make)} ${i("fillings",r=>r.fillings)}
          ${i("batches",r=>r.batches)}
          ${e.some(r=>r.to_stock)?i("beyond those, at no cost",r=>r.to_stock):u}
        </tbody>
        <tbody>
          ${Vr("A piece costs",e)} ${KS(e).map(r=>VS(e,r))}
          ${i("Cost of a piece",r=>r.cost_each,"sum-of")} ${i("The whole run",r=>r.cost)}
        </tbody>
        <tbody>
          ${kl(e,cb)}
        </tbody>
        ${Yr(e).map((r,l)=>xl(e,n,r,l===0))}
      </table>
    </div>`}var KS=e=>[...new Set(e.flatMap(({parts:t})=>t.map(({part:n})=>n)))],VS=(e,t)=>Qr(e,t,n=>yl(n,t),n=>vl(`${t} of the whole run, ${cb(n)}`,n,t)),mb=({numbers:e})=>Tl(e,t=>`each piece sold loses money, at ${t.map(({sell:n})=>n).join(", ")} to sell.`);function fb(){return s`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${zt()?GS():QS()}
  </section>`}var QS=()=>s`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>ap()}>To the prices paid</button>`;function ap(e,t="lane-studio"){le("set-up studio"),e&&je("studio",e),ht("set-up"),requestAnimationFrame(()=>z(L(t)))}function GS(){let{quote:e,complaint:t,is_old:n}=ul();return s`${e?s`${YS(e)} ${mb(e)}`:u}
    <div class="row">${e1(t)}</div>
    ${lp()?u:up(e?.currency,t)} ${t?XS(t):u}
    ${e?i1(e,n):t?u:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}function YS({numbers:e}){let t=[...new Set(e.flatMap(o=>o.dangers))];if(!t.length)return u;let n=o=>e.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return s`<div class="dangers">
    ${t.map(o=>s`<p class="danger"><strong>${ut}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var ZS=["sell","margin","markup","price"],Bi=(e,t)=>e?.file===""&&e.field===t?H(e):void 0;function XS(e){return ZS.some(t=>Bi(e,t))?u:s`<p class="alarm" role="status">${Dn(e.field)}${H(e)}</p>
    ${e.is_fault?s`<button type="button" @click=${jc}>Ask again</button>`:e.field.startsWith("/")?s`<button type="button" @click=${Lc}>Go to the field</button>`:u}
    ${Fc(e)}`}function Sl({id:e,label:t,unit:n,value:o,hint:i,complaint:r,take:l,left:d}){return s`<div class="field ${r?"wants":""}">
    <label for=${e} data-said=${n??u}>${t}</label>
    <input
      id=${e}
      .value=${M(o)}
      @input=${c=>l(c.target.value)}
      @blur=${()=>d?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${r?"true":"false"}
      aria-describedby=${r||i?`${e}-said`:u}
    />
    ${ge(e,r,i)}
  </div>`}function e1(e){let{numbers:t}=a.quote_wish;return Sl({id:"quote-numbers",label:"Numbers of pieces",value:t??String(a.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:Bi(e,"sell"),take:n=>nr({numbers:n}),left:()=>{t!==void 0&&!t.trim()&&nr({numbers:void 0})}})}var t1=()=>se()?ap("money asking",`${J("studio","/asking")}-name`):ap(),lp=()=>Object.keys(g("studio","/asking")??{}).length>0,n1=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],o1={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function up(e,t){let{by:n,figure:o}=a.quote_wish,{label:i,unit:r}=o1[n??"price"],l=d=>r&&Je(d)?`${d.trim()} ${r}`:d;return s`${ue("A price, for this moment",n,n1,d=>{nr({by:d,figure:""}),z(L("quote-figure"))})}
    ${n?s`<div class="row">
            ${Sl({id:"quote-figure",label:i,unit:r||e,value:r?o.replace(/ %$/,""):o,complaint:Bi(t,n),take:d=>nr({figure:l(d)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${t1}>Keep my ways of selling</button>`}function i1(e,t){let n=[...new Set(e.numbers.flatMap(o=>o.unpriced))];return s`${n.length?s`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${e.remarks.map(o=>s`<p class="hint">${o}</p>`)} ${pb(e,t)}
  ${r1(e,t)} ${db(e,t)}
  ${Rl({file:a.run.file,question:cl(),prices:e.numbers[0].prices,is_old:t})}`}function r1({numbers:e,steps:t,pack_steps:n,pack_steps_untold:o,gaps:i,currency:r},l){let d=c=>c===null?"":`, ${c} ${r} more`;return s`<div class="worth-making ${l?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${e.flatMap(({around:c})=>c.map(({text:p})=>s`<li><b>${p}</b></li>`))}
      ${i.map(({from:c,to:p,why:m})=>s`<li><b>${c===p?c:`${c} to ${p}`} cannot be made: ${m}.</b></li>`)}
    </ul>
    ${t.length?s`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${t.map(c=>s`<li><b>${c.sell}: ${c.begins}${d(c.more)}</b></li>`)}
            </ul>
          </details>`:u}
    ${n.length||o.length?s`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(c=>s`<li><b>${c.sell}: ${c.shown_as}${d(c.more)} to lay out</b></li>`)}
              ${o.map(({from:c,to:p,shown_as:m,why:_})=>s`<li><b>${c===p?c:`${c} to ${p}`}: ${m}, not told: ${_}.</b></li>`)}
            </ul>
          </details>`:u}
  </div>`}function hb(){let{order:e}=a;if(!e)return s`<h1 tabindex="-1">Order</h1>`;let{open:t}=e,{due:n}=t.now;return s`${sn(t)} ${an(t)}
    <h1 tabindex="-1">${String(t.now.for||"Order")}</h1>
    <p class="aside">${t.file}${n?`, due ${oe(String(n))}`:u}</p>
    ${j$()} ${bn(t.now)?wl("order"):u}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${bn(t.now)?a1():s1()}
    </section>
    ${bn(t.now)?p1():u}`}var s1=()=>s`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function a1(){let{quote:e,complaint:t,is_old:n}=N$();return s`${e?s`${lb(e)} ${ab(e)}`:u}
    <div class="row">${l1(t)}</div>
    ${lp()?u:up(e?.currency,t)} ${t?d1(t):u}
    ${e?s`${c1(e)} ${ub(e)} ${sb(e,n)}
          ${Rl({file:Ee().open.file,question:zc(Ee()),prices:e.times[0].prices,is_old:n})}`:t?u:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}var l1=e=>Sl({id:"order-times",label:"How often it is made",value:Ee().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:Bi(e,"times"),take:t=>v(Ee(),{times:t})}),u1=["times","margin","markup","price"];function d1(e){if(u1.some(n=>Bi(e,n)))return u;let t=xt("order");return s`<p class="alarm" role="status">
      ${t?s`${Dn(e.field)}${H(e)}`:e.line}
    </p>
    ${e.is_fault?s`<button type="button" @click=${Uc}>Ask again</button>`:t&&nn()?s`<button type="button" @click=${()=>Ke(nn())}>Go to the field</button>`:u}`}function c1({times:e}){let t=[...new Set(e.flatMap(n=>n.unpriced))];return t.length?s`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${t.join(", ")}. The cost leaves it out.
  </p>`:u}function p1(){let{file:e,now:t}=Ee().open,n={plan:{file:e,order:t},paper:a.printing.paper};return s`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${gl()}
    <div class="choice">
      ${dn({words:"Bench sheets",kind:"sheet",file:`${uo(e)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${lo()}</p>
  </section>`}var m1=(e,t)=>(e.due??"~").localeCompare(t.due??"~")||(t.changed??"").localeCompare(e.changed??"");function gb(){let e=[...a.files?.orders??[]].sort(m1),t=a.new_order.trim(),n=()=>{de(async()=>{await vg(t),f({new_order:""})})};return s`${Rt("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${e.length?Ut(e,f1):s`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${M(a.new_order)}
            @input=${o=>f({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t} @click=${n}>Begin the order</button>
      </div>
      ${t?"":s`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${St("order")}`}function f1(e){let{pieces:t,due:n,changed:o}=e,i=[t===void 0?"":V(t,"piece"),n?`due ${oe(n)}`:"",o?`changed ${oe(o)}`:""].filter(Boolean);return ln({kind:ko,one:e,facts:i,open:()=>kr(e.file)})}function $b(){if(a.view==="order"&&a.order)return _b(a.order.open);let e=Kn();if(e)return _b(e);let t=h1();if(t)return t;let{run:n}=a,o=a.formula_of==="apart"||!(Y(n)||n.theirs||n.failed);return a.view==="formula"&&o?g1():n.theirs?pp(n):n.failed?Al(`Not saved: ${n.failed}`):Y(n)?cp:Dl(n.shipped?dp:`Saved in ${n.file}`)}function _b(e){return e.theirs?pp(e):e.failed?Al(`Not saved: ${e.failed}`):Y(e)?cp:Dl(e.shipped?dp:`Saved in ${e.file}`)}var dp="Built-in: your first change is saved as a copy.",cp={words:"Saving ...",is_kept:!1},Dl=e=>({words:e,is_kept:!0}),Al=e=>({words:e,is_kept:!1,is_failed:!0}),pp=e=>Al(Do(e)?`Not saved: ${e.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${e.file} was changed outside this page. Choose which version to keep.`);function h1(){let e=a.formulas.apart?"apart":"run",t=$n(e);if(t)return pp(t);if((e==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&Y(o)))return a.complaint?.file===""?Al(`Not saved: ${a.complaint.problem}`):cp}function g1(){let e=a.formulas[a.formula_of];return Dl(e?e.shipped?dp:`Saved in ${e.file}`:"")}function Ol(){let{view:e,mould:t,order:n,past:o,future:i}=a;if(e==="moulds"&&t)return Pl(t,$g,bg);let r=it(e)?Kn():void 0;return r?Pl({past:bb(r,o),future:bb(r,i)},ur,zu):it(e)?{undo:cr()&&Yd,redo:Zu()&&$_}:e==="order"&&n?Pl(n,kg,xg):Pl({past:o,future:i},ur,zu)}function bb(e,t){let n=t.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===e);return o&&o.now!==e.now?t:[]}var Pl=({past:e,future:t},n,o)=>({undo:e.length?n:void 0,redo:t.length?o:void 0});var wb={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips"},_1={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],record:["Record","M6 5h12v15H6zM9.5 3.5h5v3h-5zM9 11h6M9 15h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},$1="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",b1="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",mp=e=>s`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${S`<path d=${e} />`}</svg>`;function kb(){let e=a.view==="reading";return s`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${e?u:s`<nav class="rail-lists" aria-label="Lists">
                ${Dm.map(t=>xb(t,wb[t],s`${wb[t]}`))}
              </nav>
              ${y1()}`}
    </div>
    ${e?u:v1()}
  </header>`}var w1={metric:s`g<span class="wide">, mm</span>`,both:s`both`,us:s`oz<span class="wide">, in</span>`},Ml=["metric","both","us"],yb={metric:"g",both:"both",us:"oz"},vb=e=>()=>{f({units:e}),localStorage.setItem("units",e)};function y1(){let e=Ml[(Ml.indexOf(a.units)+1)%Ml.length];return s`<div class="tools units" role="group" aria-label="Units">
      ${Ml.map(t=>s`<button type="button" aria-pressed=${a.units===t?"true":"false"} @click=${vb(t)}>
            ${w1[t]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${vb(e)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${yb[a.units]}<span
        class="unseen"
        >. Change to ${yb[e]}</span
      >
    </button>`}function v1(){let{undo:e,redo:t}=Ol();return s`<div class="bar">
    ${a.run.file?k1():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!e} @click=${e}>${mp($1)}<span>Undo</span></button>
      <button type="button" ?disabled=${!t} @click=${t}>${mp(b1)}<span>Redo</span></button>
    </div>
    ${a.run.file||a.view==="order"?D1():u}
  </div>`}function k1(){return s`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${Am.map(x1)}</div>
  </nav>`}function x1(e){let[t,n]=_1[e],o=T1(e);return xb(e,o?`${t}, ${o.words}`:t,s`${mp(n)}<span>${t}</span>${o?s`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function T1(e){if(e==="watch"&&Dg())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(e==="record"&&R1())return{sign:"\u2717",words:"refused"};if(e==="set-up"&&S1())return{sign:"\u25CB",words:"missing"}}var R1=()=>a.record.run===a.run.file&&a.record.batches.some(({begun:e})=>la(e.id)>0),S1=()=>a.complaint!==void 0&&!a.complaint.is_fault;function xb(e,t,n){let o=a.view===e||a.view==="order"&&e==="orders";return s`<button
    type="button"
    aria-label=${t}
    aria-current=${o?"page":u}
    @click=${()=>{ht(e)}}
  >
    ${n}
  </button>`}function D1(){let{words:e,is_kept:t,is_failed:n}=$b();return s`<p class="saving ${n?"failed":t?"kept":""}" role="status">${e}</p>`}var Tb=()=>s`<section class="card" aria-label="What it is for">
      <div class="row">
        ${h({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${h({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${wl("run")}`;function Sb(e){if(!d_(e))return u;let{whole:t}=e,{batches:n}=t.pieces,o=He(t)?`${V(n,"batch","batches")} together`:"all whippings together";return s`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${Rb(e,"pour","The base, whole run")}
      ${t.pipe?Rb(e,"pipe","The topping, whole run"):u} ${A1(e)}
    </div>
  </section>`}function Rb(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,r=[...D_(i),...Na(i)];return s`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:l,i:d})=>Bl(`${t}.ingredients.${d}.g`,l.name,qo(a.units,l)))}
    ${Bl(`${t}.make_g`,t==="pour"?"Base in all":"Topping in all",j(a.units,i.make_g))}
  </div>`}var Bl=(e,t,n)=>F({key:`needs.${e}`,label:t,shown:n,of:e});function A1(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((r,l)=>r.colours.map((d,c)=>({layer:r,one:d,i:l,j:c}))),o=t.dust??[];if(!n.length&&!o.length)return u;let i=r=>te(a.units,he(r,""));return s`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:l,i:d,j:c})=>Bl(`pour.layers.${d}.colours.${c}.g`,`${l.name}, for ${r.name}`,qo(a.units,l)))}
    ${o.map((r,l)=>Bl(`dust.${l}.g`,r.name,i(r)))}
  </div>`}function Db(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:l}=e.piece,d=r?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return s`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${F({key:"piece.fresh",label:c("Fresh"),shown:j(a.units,n),of:"piece.fresh_g"})}
      ${o===null?u:F({key:"piece.cured",label:c("Cured"),shown:j(a.units,o),of:"piece.cured_g"})}
      ${r?F({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:j(a.units,r.cured_g??r.fresh_g),of:r.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:F({key:"piece.label",label:"Net weight for the label",shown:j(a.units,i,0),of:"piece.label_g"})}
      ${l?F({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(p=>R(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${t&&t.amount!==null?s`${F({key:"piece.cost",label:"Material cost of one piece",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,of:"piece.cost.amount"})}
            ${t.unpriced.length?s`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:u}`:s`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${fp(e)}
    </section>
    ${fb()} ${Sb(xi(e))}`}function fp(e){let t=e.label;if(!t)return u;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?s`<h3>${i}</h3>
          <p>${r}</p>`:u;return s`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>s`<li>${i.text}</li>`)}
    </ul>
  </details>`}var P1={mass:["g","oz"],temperature:["\xB0C","\xB0F"],minutes:["min"],length:["mm","in"],volume:["ml"]};function Zr({kind:e,unit:t}){let n=P1[e]??[];return t&&n.includes(t)?[t,...n.filter(o=>o!==t)]:n}var Ab="degrees",O1=()=>localStorage.getItem(Ab)??void 0,Pb=e=>localStorage.setItem(Ab,e);function hp(e){return e.kind!=="temperature"?Zr(e)[0]:a.units!=="both"?a.units==="us"?"\xB0F":"\xB0C":O1()}function Ob(e,t){let n=e.kind==="length"&&t?t.startsWith("-")?"below":"above":void 0,o=n?t.replace(/^[+-]\s*/,""):t,i=yt(o);return Zr(e).includes(i)?{number:o.slice(0,o.length-i.length).trim(),unit:i,side:n}:{number:o,side:n}}function Mb({number:e,unit:t,side:n}){let o=e.trim();if(!o)return"";let i=t&&Je(o)?`${o} ${t}`:o;return n==="below"&&!/^[+-]/.test(i)?`-${i}`:i}function Fl({kind:e},{number:t,unit:n,side:o}){return e==="temperature"&&!n&&Je(t)?"Is that in \xB0C or in \xB0F?":e==="length"&&o===void 0&&/[1-9]/.test(t)&&!/^\s*[+-]/.test(t)?"Above the line or below it?":void 0}var Jt,M1=(e,t)=>`note-${e}-${t.replaceAll(/[^\w]/g,"-")}`;function Bb(e,t){let n=Qn(e.begun.id,t.key),o=M1(e.begun.id,t.key),i=n?.refused!==void 0;return s`<div class="blank ${i?"wants":""}" data-key=${t.key}>
    ${t.kind==="choice"?s`<p class="blank-words" id="${o}-label">${t.words}</p>`:s`<label class="blank-words" for=${o}>${t.words}</label>`}
    <div class="blank-value">${B1(e,t,o,n)}</div>
    <p class="blank-beside">
      ${t.planned?s`<span class="planned">planned <b>${t.planned}</b></span>`:u}
      ${E1(e,t,n)}
    </p>
    ${q1(e,t,o,n)}
  </div>`}function B1(e,t,n,o){if(t.kind==="choice")return W1(e,t,n,o);let i=Fb(e,t,o),r=Zr(t).length>0||t.kind==="count",l=c=>gp(e,t,{...i,number:c.target.value}),d=c=>{Eo(c),F1(e,t)};return s`<input
      id=${n}
      type=${t.kind==="date"?"date":"text"}
      inputmode=${t.kind==="count"?"numeric":r?"decimal":u}
      class=${r?"number":""}
      autocomplete="off"
      .value=${M(i.number)}
      aria-invalid=${o?.refused?"true":"false"}
      aria-describedby=${o?.refused||Fl(t,i)?`${n}-said`:u}
      @input=${l}
      @blur=${d}
      @keydown=${c=>c.key==="Enter"&&C1(c)}
    />
    ${L1(e,t,i)} ${I1(e,t,i)}`}function Fb({begun:e},t,n){if(Jt?.batch===e.id&&Jt.key===t.key)return Jt.typed;if(n?.lacks)return{number:n.text,unit:t.kind==="temperature"?void 0:hp(t)};let o=Ob(t,n?n.value:t.noted??"");return{...o,unit:o.unit??hp(t)}}function gp(e,t,n,o=!1){Jt={batch:e.begun.id,key:t.key,typed:n},Cb(e,t,n,o),Q()}function Cb(e,t,n,o){let i=Fl(t,n)!==void 0;md(e,{key:t.key,text:n.number,value:Mb(n),is_left:o,lacks:i})}function F1(e,t){if(Jt?.batch!==e.begun.id||Jt.key!==t.key)return;let{typed:n}=Jt;Jt=void 0,Cb(e,t,n,!0),Q()}function C1({target:e}){[...document.querySelectorAll(".blank :is(input, button)")].find(n=>n.compareDocumentPosition(e)&Node.DOCUMENT_POSITION_PRECEDING)?.focus()}function L1(e,t,n){let o=Zr(t);if(t.kind!=="temperature")return o.length?s`<span class="unit">${n.unit??o[0]}</span>`:u;let i=r=>{Pb(r),gp(e,t,{...n,unit:r},!0)};return Lb(`Degrees: ${t.words}`,o,n.unit,i)}function I1(e,t,n){if(t.kind!=="length")return u;let o=i=>gp(e,t,{...n,side:i},!0);return Lb(`Side: ${t.words}`,["above","below"],n.side,o)}var Lb=(e,t,n,o)=>s`<div class="choice" role="group" aria-label=${e}>
    ${t.map(i=>s`<button type="button" aria-pressed=${i===n?"true":"false"} @click=${()=>o(i)}>
          ${i}
        </button>`)}
  </div>`;function W1(e,t,n,o){let i=o?o.value:t.noted,r=l=>{Yn(e,t.key,l),B(l?`${t.words}: ${l}`:`${t.words}: taken back`)};return s`<div class="choice" role="group" id=${n} aria-labelledby="${n}-label">
    ${(t.choices??[]).map(l=>s`<button type="button" aria-pressed=${l===i?"true":"false"} @click=${()=>r(l)}>
          ${l}
        </button>`)}
    ${i?s`<button type="button" class="plain" @click=${()=>r("")}>Take back</button>`:u}
  </div>`}function E1({begun:e},t,n){if(n?.refused??n?.lacks)return s`<span class="stands not">✗ not noted</span>`;if(n)return s`<span class="stands waiting">… not kept yet</span>`;let o=Jt?.batch===e.id&&Jt.key===t.key;return t.noted!==void 0&&!(o&&!Jt.typed.number.trim())?s`<span class="stands kept">✓ noted ${H1(t.noted_at)}</span>`:u}var N1=new Intl.DateTimeFormat("en-GB",{hour:"2-digit",minute:"2-digit"}),j1=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"short"});function H1(e){if(!e)return"";let t=new Date(e);return(t.toDateString()===new Date().toDateString()?N1:j1).format(t)}function q1(e,t,n,o){if(o?.refused)return _p(o,`${n}-said`);let i=Fl(t,Fb(e,t,o));return i?s`<p class="complaint" id="${n}-said">${i}</p>`:u}function _p(e,t){let{words:n,is_asked:o,noted:i}=e.refused,r=e.value||"nothing",l=i!==void 0;return s`<div class="blank-said" role="alert">
    <p class="complaint" id=${t}>${/^(is|was|makes|has|cannot) /.test(n)?`It ${n}`:n}.</p>
    ${o||l?s`<div class="row">
            ${l?s`<button type="button" @click=${()=>Jh(e)}>Keep ${i||"it blank"}</button>`:u}
            <button type="button" @click=${()=>zh(e)}>
              ${l?`Note ${r} in its place`:`It is so: note ${r}`}
            </button>
          </div>`:u}
  </div>`}var Xr=e=>{let{beginning:t}=a.record;t&&We({beginning:{...t,...e}})},Ib=e=>We({beginning:{batch:e,code:"",answers:{}},told:void 0}),$p=()=>We({beginning:void 0}),Wb=e=>Xr({code:e,complaint:void 0});async function bp(e){let{beginning:t}=a.record;if(!(!t||t.is_asking)){Xr({is_asking:!0,complaint:void 0});try{a.run.shipped&&await Wn(a.run),await Ft(),await U1(t,e)}catch(n){if(!(n instanceof y))throw n;Xr({complaint:n.complaint}),B(`Not begun: ${n.complaint.problem}`)}finally{Xr({is_asking:!1})}}}async function U1({batch:e,code:t,answers:n},o){let i=a.run.file,r=Co(e)!==void 0,l=await Eh({run:i,batch:e,seen:o,code:t.trim()||void 0,again:r,...n}),[d]=l.record.batches;We({run:i,beginning:void 0,told:{batch:d.begun.id,remarks:(l.record.remarks??[]).map(c=>c.text)}}),ia(l,i),B(`The record is begun: ${d.begun.code}`),ua(d,Mo(e)),await wn()}async function Eb(e,t){let{beginning:n}=a.record;if(!n)return;let{answers:o}=n,i=r=>{let l=e[r];return l===void 0?o[r]:[...o[r]??[],l]};Xr({answers:{confirmed:i("confirmed"),lot:i("lot"),"beyond-stock":i("beyond-stock")}}),await bp(t)}var wp=(e,t)=>We({code:{batch:e,text:t}}),Cl=()=>We({code:void 0});async function Nb(){let{code:e,run:t}=a.record;if(!e?.text.trim())return Cl();try{let n=crypto.randomUUID();ia(await ea({run:t,batch:e.batch,act:n,code:e.text.trim()}),t),Cl()}catch(n){if(!(n instanceof y))throw n;We({code:{...e,complaint:H(n.complaint)}})}}var es="batch-code";function Ll({begun:e}){let{code:t}=a.record,n=t?.batch===e.id,o=()=>{wp(e.id,e.code),z(L(es))};return s`<div class="batch-code">
    <p><span class="aside">On the mould:</span> <b class="code">${e.code}</b></p>
    ${n?s`<div class="row">
            <div class="field ${t.complaint?"wants":""}">
              <label for=${es}>Another code</label>
              <input
                id=${es}
                autocomplete="off"
                .value=${M(t.text)}
                aria-describedby=${t.complaint?`${es}-said`:u}
                @input=${i=>wp(e.id,i.target.value)}
              />
            </div>
            <button type="button" class="strong" @click=${()=>{Nb()}}>Use this code</button>
            <button type="button" @click=${Cl}>Leave it</button>
            ${t.complaint?s`<p class="complaint" id="${es}-said">${t.complaint}</p>`:u}
          </div>`:s`<button type="button" @click=${o}>Change the code</button>`}
  </div>`}var ts;function z1(){let e=new Date;return[e.getFullYear(),e.getMonth()+1,e.getDate()].map(t=>String(t).padStart(2,"0")).join("-")}var vp=e=>`cured.${e}`;function jb(e,t){let{id:n}=e.begun,o=ts?.batch===n?ts:{batch:n,day:z1(),pieces:"",weight:""},i=e.cured??[],r=i.find(({on:d})=>d===o.day),l=o.day!==""&&o.pieces.trim()!==""&&o.weight.trim()!=="";return s`<div class="blank cure" data-key=${t.key}>
    <p class="blank-words">
      Weighed while it cures ${t.planned?s`<small>planned, cured: ${t.planned}</small>`:u}
    </p>
    ${K1(n).map(V1)}
    ${i.length?s`<ul class="weighings">
            ${i.map(d=>G1(e,d))}
          </ul>`:s`<p class="aside">None noted yet.</p>`}
    <div class="row">
      ${yp("Day","cure-day","date",o.day,d=>({...o,day:d}))}
      ${yp("Pieces","cure-pieces","numeric",o.pieces,d=>({...o,pieces:d}))}
      ${yp(`Weight together, ${t.unit??"g"}`,"cure-weight","decimal",o.weight,d=>({...o,weight:d}))}
      <button type="button" ?disabled=${!l} @click=${()=>J1(e,t,o)}>
        ${r?"Put it in its place":"Note this weighing"}
      </button>
    </div>
    ${r?s`<p class="hint">Noted of ${oe(r.on)} already: ${sa(r)}.</p>`:u}
  </div>`}var yp=(e,t,n,o,i)=>s`<div class="field short">
    <label for=${t}>${e}</label>
    <input
      id=${t}
      type=${n==="date"?"date":"text"}
      inputmode=${n==="date"?u:n}
      autocomplete="off"
      .value=${M(o)}
      @input=${r=>{ts=i(r.target.value),Q()}}
    />
  </div>`;function J1(e,{unit:t="g"},n){let o=Je(n.weight)?`${n.weight.trim()} ${t}`:n.weight.trim(),i=n.pieces.trim(),r=`${i} ${i==="1"?"piece":"pieces"}, ${o}`;Yn(e,vp(n.day),r),B(`Weighing of ${oe(n.day)}: ${r}`),ts=void 0,Q(),z(L("cure-pieces"))}var K1=e=>a.record.acts.filter(t=>t.batch===e&&t.key.startsWith("cured.")),V1=e=>{let t=oe(e.key.slice(6));return e.refused?s`<p><b>${t}</b> <span class="stands not">✗ not noted</span></p>
        ${_p(e,`said-${e.id}`)}
        <div class="row"><button type="button" @click=${()=>Q1(e)}>Correct it</button></div>`:s`<p><b>${t}</b>: ${e.value||"taken back"} <span class="stands waiting">… not kept yet</span></p>`};function Q1({batch:e,key:t,value:n}){let[,o="",i=""]=/^\s*(\S+) pieces?, (.*)$/.exec(n)??[];ts={batch:e,day:t.slice(6),pieces:o,weight:i},Q(),z(L("cure-pieces"))}function G1(e,t){let n=Qn(e.begun.id,vp(t.on));return s`<li>
    <span><b>${oe(t.on)}</b>: ${sa(t)} <span class="stands kept">✓ noted</span></span>
    ${n?u:s`<button
            type="button"
            aria-label="Take back the weighing of ${oe(t.on)}"
            @click=${()=>Yn(e,vp(t.on),"")}
          >
            Take back
          </button>`}
  </li>`}function Hb(){let{batches:e}=a.record;if(e.length<2)return u;let t=ra();return s`<ul class="makings" aria-label="Batches of this run">
    ${[...e].reverse().map(n=>Y1(n,n.begun.id===t?.begun.id))}
  </ul>`}function Y1(e,t){let{id:n,code:o}=e.begun,i=la(n);return s`<li>
    <button type="button" aria-pressed=${t?"true":"false"} @click=${()=>gr(n)}>
      <b>${o}</b> <span>${kp(e)}</span>
      <small>${ns(e)}; ${V(e.noted,"blank")} noted${i?`; ${i} not taken`:""}</small>
    </button>
  </li>`}function kp({number:e,begun:t}){let{of:n=1}=a.record;return`${n>1||e>1?`batch ${e} of ${Math.max(n,e)}, `:""}${V(t.pieces,"piece")}, begun ${oe(t.begun_on)}`}var ns=({for_sale:e,not_for_sale_because:t=""})=>e?"For sale":`Not for sale: ${vt(t)}`;function qb(e,t){let{number:n,begun:o}=e,i=a.bench.run===a.record.run?jn(n):void 0,r=i&&new Date(i.begun_at)<=new Date(o.begun_at)?Mo(n):"";return!r||aa(e,t.key)||Qn(o.id,t.key)?u:s`<p class="read-at-weights">
    <button type="button" @click=${()=>Yn(e,t.key,r)}>
      Note ${r}, as read at the weights
    </button>
  </p>`}function Ub(e){oa();let t=ra();return s`<section class="record" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    ${Z1()} ${Hb()} ${t?eD(t):X1(e)}
  </section>`}function Z1(){let{failed:e,unsent:t,acts:n}=a.record,o=t!==void 0&&n.some(i=>!i.refused);return s`<div role="status">
    ${e!==void 0?s`<p class="alarm"><strong>What is recorded could not be read:</strong> ${e}.</p>`:u}
    ${o?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${t}. What you type is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
  </div>`}function X1(e){return a.record.version===void 0?s`<p class="hint">${a.record.failed===void 0?"Reading ...":""}</p>`:s`<p>No batch of this run is recorded yet. Its record begins when its lye is mixed, at the weights.</p>
    <p><button type="button" class="strong" @click=${e}>To the weights</button></p>`}function eD(e){let{blanks:t}=e;return s`<div class="record-head">
      ${Ll(e)}
      <p>${kp(e)}</p>
      <p class="sale ${e.for_sale?"is":""}">
        <span aria-hidden="true">${e.for_sale?"\u2713":"\u2717"}</span> <b>${ns(e)}</b>
      </p>
    </div>
    ${t?iD(e,t):s`<p class="hint">Reading ...</p>`}`}var tD={day_before:"Cast beforehand",base_mixed:"Mixing",poured:"Pouring",topping_mixed:"Mixing",whipped:"Whipping",piped:"Piping",afterwards:"Pieces and time"},nD="unmoulded_on",xp="Cure and test";function oD(e){let t=[];for(let n of e){let o=t.at(-1),r=n.key===nD||o?.title===xp?xp:tD[n.when],l=n.of??"";o?.title===r&&o.of===l?o.blanks.push(n):t.push({title:r,of:l,blanks:[n]})}return t}function iD(e,t){let n=oD(t);return s`<nav class="parts-of-record" aria-label="Parts of the record">
      ${n.map((o,i)=>s`<button type="button" @click=${()=>rD(i)}>${zb(o)}</button>`)}
    </nav>
    ${n.map((o,i)=>sD(e,o,i))}`}var zb=({title:e,of:t})=>t?`${e}: ${t}`:e,Tp=e=>`record-part-${e}`;function rD(e){let t=document.getElementById(Tp(e));t?.focus({preventScroll:!0}),t?.scrollIntoView({block:"start"})}var sD=(e,t,n)=>s`<section class="record-part" aria-labelledby=${Tp(n)}>
    <h2 id=${Tp(n)} tabindex="-1">${zb(t)}</h2>
    ${t.title===xp?aD(e):u} ${t.blanks.map(o=>lD(e,o))}
  </section>`,aD=({for_sale:e})=>e?u:s`<p class="aside">
        Nothing is for sale without a test: note how it was tested and what came of it, then the day from which it is
        ready, or why it is held back.
      </p>`,lD=(e,t)=>t.kind==="weighing"?jb(e,t):s`${Bb(e,t)} ${fd(t)?qb(e,t):u}`;var[Kb,Sp]=[440,270],[os,Rp,Il,Fi]=[64,Kb-10,10,Sp-52],uD=6,dD=8;function Jb(e){let t=e/uD,n=10**Math.floor(Math.log10(t)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=t);return Array.from({length:Math.floor(e/o+1e-9)+1},(i,r)=>r*o)}var Ci=e=>R(e,1);function Vb(e,t){let n=e.at(-1)?.depth_mm??1,o=e.at(-1)?.volume_ml??1,i=d=>Ci(os+(Rp-os)*d/n),r=d=>Ci(Fi-(Fi-Il)*d/o),l=e.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${r(c)}`).join("");return s`<svg
      class="level-curve"
      viewBox="0 0 ${Kb} ${Sp}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${t} millimetres"
    >
      ${Jb(n).map(d=>S`<path class="grid" d="M${i(d)} ${Il}V${Fi}" />
            <text x=${i(d)} y=${Fi+20} text-anchor="middle">${Ci(d)}</text>`)}
      ${Jb(o).map(d=>S`<path class="grid" d="M${os} ${r(d)}H${Rp}" />
            <text x=${os-8} y=${r(d)} text-anchor="end" dominant-baseline="middle">${Ci(d)}</text>`)}
      ${S`<text x=${(os+Rp)/2} y=${Sp-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Il+Fi)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${r(0)}${l}" />
        <path class="pour-line" d="M${i(t)} ${Il}V${Fi}" />`}
    </svg>
    ${cD(e)}`}function cD(e){let t=Math.max(1,Math.round(e.length/dD)),n=e.filter((o,i)=>(i+1)%t===0);return s`<details>
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
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:r})=>s`<tr>
              <th scope="row">${Ci(o)}</th>
              <td>${Ci(i)}</td>
              <td>${R(r,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Wl=Math.PI/8,pD=500,Dp=class extends HTMLElement{#n=[];#e=0;#t;#i=!1;#o=!1;#r="";#s=!1;#l="";#a="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#t?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#n=t,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#t?.end(),this.#t=void 0,this.#l="",URL.revokeObjectURL(this.#r)}#$(t){this.#m=t,t&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#t||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#t=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let t=this.#t||this.#o;!this.#m||!t||this.#c()===this.#l||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},pD))}#c(){let{of:t}=this.#n[this.#e],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#s&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let t=this.#c();if(t!==this.#l){try{let n=await Vt(JSON.parse(t));if(t!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#r),this.#r=URL.createObjectURL(n)):this.#t?.show(ci(await n.arrayBuffer())),this.#l=t,this.#a=""}catch(n){if(!(n instanceof y))throw n;this.#a=n.message}this.#u()}}#_(t){t(),this.#a="Drawing ...",this.#u(),this.#p()}#u(){let t=s`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>s`<button
            type="button"
            aria-pressed=${i===this.#e?"true":"false"}
            @click=${()=>this.#_(()=>this.#e=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=s`<p class="aside" role="status">${this.#a}</p>`;_t(s`${t} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let t=i=>()=>this.#t?.turn(i),n=i=>()=>this.#t?.tip(i),o=()=>this.#_(()=>this.#s=!this.#s);return s`<canvas
        role="img"
        aria-label="${this.#n[this.#e]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-Wl)}>Turn left</button>
        <button type="button" @click=${t(Wl)}>Turn right</button>
        <button type="button" @click=${n(Wl)}>From above</button>
        <button type="button" @click=${n(-Wl)}>From below</button>
        <button type="button" aria-pressed=${this.#s?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return s`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#r?s`<img
              src=${this.#r}
              alt="${this.#n[this.#e].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",Dp);function Qb(e){let{measured:t}=a;if(!t)return s`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=t.gauge.pockets[0],o=t.gauge.notes;return s`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${F({key:"mould.brimful",label:"To the brim",note:`${O(Ae(a.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:Oe(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:t.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${Vb(n.levels,e.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${mD(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?s`<ul class="limits">
            ${o.map(i=>s`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function mD(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return e.pipe||e.decorations?.length||e.pour.layers?.length?[o,n]:[n,o]}var fD=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function Gb(e){let{batch:t}=a.printing;return He(e)&&t<=e.pieces.batches?t:0}function hD(e){if(!He(e))return u;let t=Gb(e),n=i=>zo({batch:Number(i.target.value)}),o=(i,r)=>s`<option value=${i} .selected=${M(i===t)}>${r}</option>`;return s`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${fD(e).map(({number:i,one:r})=>o(i,`batch ${i} of ${e.pieces.batches}: ${qt(e,r)}`))}
      </select>
    </div>
  </div>`}function Yb(e){let{paper:t}=a.printing,n=uo(a.run.file),o={file:a.run.file,run:a.run.now},i=a.measured?.mould,r={file:i,"below-brim":`${e.pour.below_brim_mm} mm`},l=Gb(e),d={plan:o,paper:t,...l?{batch:String(l)}:{}};return s`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${gl()} ${hD(e)}
    <div class="choice">
      ${dn({words:"Bench sheet",kind:"sheet",file:`${n}${l?` batch ${l}`:""}`,of:d},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?Qe("Label draft",tt(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${Qe("Drawing of the pour, true size",tt(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${Qe("Drawing of the piece",tt(`${n}.svg`,{kind:"piece",plan:o}))}
      ${Qe("Whole piece, GLB (3D viewer)",tt(`${n}.glb`,{kind:"glb",plan:o}))}
      ${Qe("Whole piece, STL (3D printing)",tt(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?s`${Qe("Filled cavity, GLB (3D viewer)",tt(`${n} cavity.glb`,{kind:"glb",gauge:r}))}
            ${Qe("Cavity, STL (3D printing)",tt(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${lo()||`The drawing has the pour line ${O(Ae(a.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var Zb=e=>Yb(e);var Pe={at:"/decorations"},Li=e=>`${Pe.at}/${e}`,co=e=>D("run",`${Li(e)}/name`).trim()||`Decoration ${e+1}`,nt=()=>$(a.run.now,"/cut")!==void 0,Ko=e=>["mould","rod","drizzle","bought"].find(t=>g("run",`${e}/${t}`)!==void 0),is=e=>["per_piece","per_cast"].find(t=>g("run",`${e}/${t}`)!==void 0);var gt="/batch",Xb=e=>`${e}/moulds_owned`;function Ap(){return A({name:"batches",pointers:[gt],summary:`Batches${gD()}`,body:()=>s` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${I("run",gt)}
        <div class="row">${_D()} ${bD()}</div>
        ${T({question:"Cavities at each filling",at:gt,asked_at:`${gt}/fill`,chosen:g("run",`${gt}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:e=>ew("fill",e==="full"?e:void 0)})}`})}function gD(){let[e,t]=[`${gt}/pieces`,`${gt}/casts`].map(o=>D("run",o)),n=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function ew(e,t){let n=fe("run",gt,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function _D(){let e=g("run",`${gt}/casts`)!==void 0,t=(n,o)=>h({label:o,at:`${gt}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return nt()?g("run",`${gt}/pieces`)!==void 0?s`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${$D}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function $D(){E("run","Counted in loaves",gt,ew("pieces",void 0))}function bD(){let e=`${gt}/whippings`;return!pt()&&g("run",e)===void 0?u:h({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var wD={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Dt={at:"/dust"},El=e=>D("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function tw(){le("set-up dust"),N(Dt,{name:""},"Dust")}function yD(e){return g("run",`${e}/per_piece`)!==void 0?"piece":g("run",`${e}/on_covered_surface`)===void 0?void 0:"surface"}function nw(e){let t=`/dust/${e}`,n=yD(t),o=El(e),i=r=>({...fe("run",t,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...wD[r]});return s` ${h({label:"Which powder",at:`${t}/name`})}
  ${T({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?h({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?s`<div class="row">
            ${h({label:"Powder on the covered surface",at:`${t}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${h({label:"Share of the surface covered",at:`${t}/coverage`,unit:"%",short:!0})}
            ${h({label:"Share of the powder that sticks",at:`${t}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${io("run",t,o)}`}var vD={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function kD(e){return["on_top","buried"].find(t=>g("run",`${e}/${t}`)!==void 0)??"by number"}function ow(e,t){let n=kD(e),o=i=>({...fe("run",e,["on_top","buried"]),...vD[i]});return Ko(e)==="drizzle"?s`<p class="aside">A drizzle lies on the surface it covers.</p>`:Ko(e)==="bought"?s`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:A({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>s` ${T({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?xD(`${e}/on_top`):n==="buried"?RD(e,t):s`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function xD(e){return s`<div class="row">
      ${h({label:"Pressed into the top",at:`${e}/pressed_in`,unit:"mm"})}
      ${h({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${iw(e,"It is turned")}`}function iw(e,t){let n=o=>h({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return A({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>s` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var TD=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function RD(e,t){let n=`${e}/buried`,o=t===k(Pe).findIndex(l=>l.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),r=g("run",`${n}/placed`);return s`${I("run",n)}
  ${h({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${T({question:"When is it set in?",at:`${n}/placed`,chosen:r,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:l=>l,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${T({question:"Where in the pour?",at:e,asked_at:`${n}/arrange`,chosen:i,answers:TD,puts:l=>DD(e,l)})}
  ${i==="said"?PD(e,t):u}`}var SD=()=>s`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${S`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,rw={x:"",y:"",height:""};function DD(e,t){let n=fe("run",`${e}/buried`,["arrange","places"]);if(t!=="said")return{...g("run",e),buried:{...n,arrange:t}};let o=Number(g("run",`${e}/${is(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>rw);return{...fe("run",e,["per_piece","per_cast"]),[sw(e)]:i.length,buried:{...n,places:i}}}var sw=e=>nt()?"per_cast":is(e)??"per_piece";function AD(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,l)=>P(r,`${e}/${l}`,void 0),n);return P(i,`${e}/${sw(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function PD(e,t){let n=AD(e),o=k(n);return s`${SD()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,r)=>{let l=`${n.at}/${r}`,d=c=>h({label:`Place ${r+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return s`<div class="part" id=${C(n,r)} role="group" aria-label="Place ${r+1} of ${co(t)}">
        ${I("run",l)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${U(n,r,`place ${r+1} of ${co(t)}`)}
        </div>
        ${iw(l,`Place ${r+1} is turned`)}
      </div>`})}
    ${G(n,"Add a place",()=>N(n,rw,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var lw=e=>`${e} made`;function OD(){let e=Li(k(Pe).length),t=nt()?{}:{per_piece:""};le("set-up decorate");for(let n of[lw(e),`${e} where`])je("run",n);N(Pe,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function uw(){let[e,t]=[k(Pe).length>0,k(Dt).length>0];return s`${G(Pe,e?"Add another decoration":"Add a decoration",OD)}
  ${G(Dt,t?"Add another dust":"Add a dust",tw)}`}function dw(e){let t=Li(e);return s` ${I("run",t)} ${LD(t)}
    <div class="row">
      ${BD(t)} ${h({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${Ko(t)==="bought"?u:MD(t)}
    </div>
    ${ow(t,e)} ${io("run",t,co(e))}`}var MD=e=>s`${h({label:"Lost in melting",at:`${e}/melt_loss`,unit:"%",short:!0})}
  ${h({label:"Left in the jug per tray fill",at:`${e}/left_in_jug`,unit:"g",short:!0})}
  ${h({label:"Density when set",at:`${e}/density`,unit:"g/ml",short:!0})}`;function BD(e){let t=is(e),n=X("run",`${e}/buried/places`).length;if(n&&n===g("run",`${e}/${t}`)&&!(nt()&&t==="per_piece"))return s``;let o=t==="per_cast"?nt()?"In each loaf":"In each cast":nt()?"On each bar":"On each piece",i=r=>({...fe("run",e,["per_piece","per_cast"]),[r]:t?g("run",`${e}/${t}`):""});return s`${nt()?T({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${t?h({label:o,at:`${e}/${t}`,count:!0,short:!0}):u}`}var FD={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},aw={density:"",melt_loss:"",left_in_jug:""};function CD(e,t){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...t==="drizzle"||t==="bought"?["on_top","buried"]:[],...t==="bought"?[...Object.keys(aw),"time_per_tray_fill"]:[]],o=Ko(e)==="bought"&&t!=="bought"?aw:{};return{...fe("run",e,n),...o,...FD[t]}}function LD(e){let t=Ko(e),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${e}/${o}`);return A({name:lw(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>s` <div class="row">
          ${h({label:"What it is called",at:`${e}/name`})}
          ${h({label:t==="bought"?"What is bought":"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">${t==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${T({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>CD(e,o)})}
        ${t?ID[t](e):u}
        ${t==="bought"?u:h({label:"To fill all trays once, setting included",at:`${e}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var ID={mould:WD,rod:e=>s`<div class="row">
      ${h({label:"Rod, diameter",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${h({label:"Rod, length",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>s`<div class="row">
      ${h({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${h({label:"Thickness",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:e=>h({label:"One weighs",at:`${e}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function WD(e){let t=g("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return s`${yi("Cast in",`${e}/mould`,a.files?.moulds)}
  ${T({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?h({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):h({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${T({question:"What makes one?",at:`${e}/cast_as`,chosen:g("run",`${e}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var At=()=>a.plan?.piece.cost?.materials.map(e=>e.name)??[],ee=e=>a.fats.find(t=>t.id===e)?.name??e,Pp=8;function Vo({key:e,label:t,offers:n,among:o,taken:i,take:r}){let l=`find-${e}`,d=a.finding?.key===e?a.finding.text:"",c=(d.trim()?ED(d,o):n).filter(w=>!i(w)),p=w=>{f({finding:void 0}),r(w)},m=d.trim(),_=m!==""&&!i(m)&&!c.some(w=>ze(ee(w))===ze(m)),b=()=>{if(!m)return;let w=c.find(K=>ze(ee(K))===ze(m)||ze(K)===ze(m)),x=c.length===1?c[0]:void 0;(w??x??_)&&p(w??x??m)};return s`<div class="picker" role="group" aria-labelledby="${l}-label">
    <p class="question" id="${l}-label">${t}</p>
    <div class="field">
      <label for=${l}>Find it by its name</label>
      <input
        id=${l}
        .value=${d}
        @input=${w=>f({finding:{key:e,text:w.target.value}})}
        @keydown=${w=>{w.key==="Enter"&&b()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${c.slice(0,Pp).map(w=>s`<button type="button" @click=${()=>p(w)}>${ee(w)}</button>`)}
      ${_?s`<button type="button" @click=${()=>p(m)}>Add "${m}"</button>`:u}
    </div>
    ${c.length>Pp?s`<p class="hint">${c.length-Pp} more: type a part of the name.</p>`:u}
  </div>`}function ED(e,t){let n=t?[]:At(),o=ze(e).split(/\s+/).filter(Boolean),i=a.fats.filter(l=>kn(l,e)!==void 0).map(({id:l})=>l),r=l=>o.every(d=>ze(ee(l)).includes(d));return[...new Set([...n.filter(l=>r(l)||i.includes(l)),...i])]}var An="/packaging",Ii={at:An,stays:!0},cw={material:"",each_piece:""},ND={studio:void 0,own:[cw],nothing:[]},jD=()=>g("run",An)===void 0?"studio":k(Ii).length?"own":"nothing";function Op(){let e=jD();return A({name:"packaging",pointers:[An],summary:`Packaging${HD(e)}`,body:()=>s`${T({question:"What goes round each piece",at:An,is_told_elsewhere:e==="own",chosen:e,answers:[["studio","As the studio packs"],["own","Of this run's own"],["nothing","Nothing"]],puts:t=>ND[t],then:t=>t==="own"?`${An}/0/material`:An})}
      ${e==="own"?qD():u}`})}function HD(e){if(e==="studio")return"";if(e==="nothing")return": none";let t=X("run",An).map(({material:n})=>ee(String(n??""))).filter(Boolean);return t.length?`: ${t.join(", ")}`:""}var qD=()=>s`<p class="hint">In place of all that the studio packs with. Its price is that of its pack.</p>
    ${k(Ii).map((e,t)=>{let n=String(e.material||`packaging ${t+1}`);return s`<div class="row" id=${C(Ii,t)}>
        ${h({label:`Material ${t+1}`,at:`${An}/${t}/material`,hint:"As its pack or price calls it."})}
        ${h({label:`Of it, each piece ${t+1}`,at:`${An}/${t}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
        ${U(Ii,t,n)}
      </div>`})}
    ${G(Ii,"Another material",()=>N(Ii,cw,"A material"))}`;function pw(){let e="/lye_pot",t=g("run",e)!==void 0;return!t&&!pt()?u:s`<div class="labelled">
      ${Cd(e,"Make one pot of lye solution for both",t,{})}${xn("lye_solution")}
    </div>
    ${Et("lye_solution")}
    ${t?h({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function mw(e){let t={at:"/bottles"},n=k(t);return A({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>s` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${e&&_e(e)?` Weights are of ${_e(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${t.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return s`<div class="part" id=${C(t,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${U(t,i,l)}
            </div>
            ${I("run",r)}
            <div class="row">
              ${h({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${h({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${e?UD(e,i,l):u}
          </div>`})}
        ${G(t,"Use up a bottle",()=>N(t,{name:"",holds:""},"bottle"))}`})}function UD(e,t,n){let o=e.bottles?.[t];return o?.name!==n?u:o.parts.map((i,r)=>F({key:`bottle.${t}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${R(i.percent_of_batter,2)} % of the batter`,shown:te(a.units,he(i,"")),size:"weigh",of:`${e.place}.bottles.${t}.parts.${r}.g`}))}var rs="/label",Bp=()=>g("run",rs)!==void 0;function fw(){let t=g("studio",Wi.studio)!==void 0?{weight_spread:""}:{market:""};le("set-up label"),E("run","Label added",rs,t,L("lane-label"))}function hw(){return s`${I("run",rs)} ${zD()}
    <button type="button" @click=${()=>E("run","Label removed",rs,void 0)}>Remove the label</button>`}var Wi={run:"/label/market",studio:"/label/market"};function Fp(){let{of:e,at:t}=Dr(Wi);return s`${T({of:e,question:"Where it is sold",at:e==="run"?rs:t,asked_at:t,chosen:g(e,t)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>e==="run"?JD(n):n})}
  ${oo("Where it is sold",[Wi])}`}function zD(){let e=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return s`${Fp()}
  ${T({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:e,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:KD})}
  ${e==="weighed"?VD():s`<div class="row">
          ${h({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${h({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${h({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${on(Wi)==="EU"||g("run",Mp)!==void 0?Cd(Mp,"With the e mark",g("run",Mp)===!0,!0):u}`}var Mp="/label/e_mark";function JD(e){return{...fe("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function KD(e){let t=fe("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return e==="weighed"?{...t,weighed_pieces:["","",""]}:t}function VD(){let e={at:"/label/weighed_pieces",least:3};return s`<div class="trials">
      ${k(e).map((t,n)=>s`<div class="row" id=${C(e,n)}>
            ${h({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${U(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${G(e,"One more piece",()=>N(e,"","piece"))}`}function gw(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,r=e.batches.map(c=>`${Kd(e)?`${c.count} of `:""}${qt(e,c)}`),l=`Made in ${t} batches${Kd(e)?": ":" of "}${Ie(r)}; ${Fa(n,o)}.`,d=e.batch_limits.filter(c=>c.sets);return s`<div class="batches-told of-plan">
    ${He(e)?s`<p><b>${l}</b></p>`:u}
    ${i>0?s`<p>
            ${V(i,e.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?s`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${e.around.length?s`<p><span class="called">One fewer, one more:</span> ${e.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var _w=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function $w(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.decorations?.find(c=>!c.buried&&c.cavity_fills>0),r=i?vw(i):0,l=i?i.on_top?.stands_proud_mm??1.9*r:0,d=e.pipe?QD(e,t,n,l):0;return{brim:n,line:o,topping:d,ball:r,proud:l,top:Math.max(n,(e.pipe?n:o)+d+l)}}function QD(e,t,n,o){let i=Wt($(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(e.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[l,d]=td(t,t.brim-.01),c=Math.PI/4*(d-l)**2;return 1500*e.pipe.visible_each_ml/c}function Cp(e,t){let[n,o]=td(e,e.brim-.01),i=(n+o)/2,r=3,l=m=>(o-n)/2*Math.sqrt(1-(m/(r+.3))**2),d=m=>-(t.brim+t.topping*m/r),c=(m,_,b)=>{let w=i+b*(Math.max(l(m),l(_))+(o-n)*.035);return`C${w} ${d(m)} ${w} ${d(_)} ${i+b*l(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<r;++m)p+=c(m,m+1,-1);p+=`L${i+l(r)*.94} ${d(r)}`;for(let m=r;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var ss=(e,t)=>e===t?`shaded ${t}`:"plain";function po(e,t,n=u){return s`${bw(e,t,n)}
  ${e==="decorate"&&Lp(t)?s`<p class="hint">${Lp(t)}</p>`:u}`}var mo=(e,t)=>s`<div class="small-view">${bw(e,t,u)}</div>`;function bw(e,t,n){let o=a.measured?.outline;if(!o)return s`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=$w(t,o),r=o.right-o.left,l=Math.max(6,r*.1),d={x:o.left-l,y:-i.top-l,w:r+2*l,h:i.top+2*l};return s`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${rA(e,t)}>
      ${GD(e)} ${YD(e,t,o,i)} ${XD(e,t,o,i)} ${eA()}
      ${tA(e,t,o,i)} ${iA(e,t,o,i)}
      ${S`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function ww(e,t){let n=a.measured.outline,o=$w(e,n),i=n.right-n.left,r=Math.max(6,i*.1),l=o.top+2*r;return{share:(o.top+r-t)/l,per_mm:1/l,w:i+2*r,h:l}}function GD(e){return S`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${_w(yw())} /></clipPath>
  </defs>`}function yw(){let e=a.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function YD(e,t,n,o){let i=e==="cut"?"pour":e,r=t.pour.layers??[],l=(r.length?r.map(d=>ZD(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return S`<g clip-path="url(#cavity-${e})">${l.map((d,c)=>S`<path class="whole" d=${d} /><path class="${ss(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?S`<path fill="url(#hatch-${e})" d=${d} />`:u}`).reverse()}</g>`}function ZD(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function XD(e,t,n,o){if(!t.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,l=(n.left+n.right)/2;return S`<g clip-path="url(#cavity-${e})"><rect class=${ss(e,"pipe")} x=${l-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function eA(){return S`<path class="wall" fill-rule="evenodd" d=${_w(yw())} />`}function tA(e,t,n,o){let i=(n.left+n.right)/2,r=t.pipe?o.brim:o.line,l=t.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return S`
    ${t.pipe?S`<path class=${ss(e,"pipe")} d=${Cp(n,o)} />${e==="pipe"?S`<path fill="url(#dots-pipe)" d=${Cp(n,o)} />`:u}`:u}
    ${e==="dust"?nA(t,n,o):u}
    ${o.ball?S`<circle class=${ss(e,"decorate")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:d,one:c,i:p})=>oA(ss(e,"decorate"),i,d,c,p))}`}function nA(e,t,n){let o=`M${t.left} ${-n.line}H${t.right}`;return S`<path class="powder" d=${e.pipe?Cp(t,n):o} />`}function oA(e,t,n,o,i){let[r,l]=[t+n.middle_mm[0],n.middle_mm[2]],d=Wt($(a.run.now,`/decorations/${i}/rod/diameter`)),c=Wt($(a.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return S`<circle class=${e} cx=${r} cy=${-l} r=${vw(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),b=d/2*Math.sqrt(1-_*_),w=c*_+2*b,x=-180/Math.PI*Math.atan2(m,p);return S`<rect class=${e} x=${-w/2} y=${-d/2} width=${w} height=${d} rx=${b} ry=${b?d/2:0}
    transform="translate(${r} ${-l}) rotate(${x})" />`}var vw=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function Lp(e){let t=(e.decorations??[]).filter((n,o)=>$(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function iA(e,t,n,o){if(e!=="cut"||!t.cut)return u;let i=Math.max(t.cut.rows,t.cut.columns);return S`${Array.from({length:i-1},(r,l)=>{let d=n.left+(n.right-n.left)*(l+1)/i;return S`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function rA(e,t){let n=O(Ae(a.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${Lp(t)}`.trim()}var sA=e=>`set-up ${e}`;function ot({name:e,title:t,drawing:n,result:o,about:i,form:r}){let l=sA(e),d=()=>kt({part:t,fold:l},r);if(Tn())return s`${d()}`;i.some(([m,_])=>Ne(m,_))&&le(l);let c=a.open.has(l),p=wi().filter(({folds:m})=>m.includes(l)).length;return s`<section class="lane ${e} ${c?"is-open":""}" aria-labelledby="lane-${e}">
    <div class="part-line">
      ${c||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${e}" tabindex="-1">${t}</h2>
        ${o} ${p?s`<p class="lacks">${p} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${c?"true":"false"}
        aria-label="${c?"Close":"Change"} ${t}"
        @click=${()=>Ue("open",l)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?s`<div class="lane-body">${d()}</div>`:u}
  </section>`}var be=e=>s`<p class="order ${a.is_old&&a.plan?"old":""}">${e}</p>`;var kw=()=>k(Pe).length>0,xw=()=>k(Dt).length>0;function Tw(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function Rw(e){let t=e?k(Pe).flatMap((n,o)=>Aw(e,o)??[]):[];return ot({name:"decorate",title:"Decorate",drawing:e&&(()=>mo("decorate",e)),result:t.length?t.map(n=>uA(e,n)):be(Sw(Pe,co)),about:[["run",Pe.at]],form:()=>s`${e?s`<div class="side">${po("decorate",e)}</div>`:u}
        <div class="weights">${e?k(Pe).map((n,o)=>aA(e,o)):u}</div>
        ${Pw(Pe,co,dw)}`})}var Sw=(e,t)=>`${k(e).map((n,o)=>t(o)).join(", ")}, not yet with figures.`;function aA(e,t){let n=Aw(e,t);return n?dA(e,n,t):u}function Dw(e){let t=e?.dust?.length?k(Dt).map((n,o)=>pA(e,o)):void 0;return ot({name:"dust",title:"Dust",drawing:e&&(()=>mo("dust",e)),result:t??be(Sw(Dt,El)),about:[["run",Dt.at]],form:()=>s`<div class="side">${e?po("dust",e):u}</div>
        <div class="weights">${e?k(Dt).map((n,o)=>mA(e,o)):u}</div>
        ${Pw(Dt,El,nw)}`})}var Aw=(e,t)=>Tw(e.decorations,k(Pe),D("run",`/decorations/${t}/name`),t);function Pw(e,t,n){return s`<div class="all-questions">
    ${k(e).map((o,i)=>s`<section class="questions" id=${C(e,i)} aria-labelledby="${C(e,i)}-title">
          <div class="part-head">
            <h3 id="${C(e,i)}-title">${t(i)}</h3>
            ${U(e,i,t(i))}
          </div>
          ${kt({part:t(i)},()=>n(i))}
        </section>`)}
  </div>`}function lA(e,t){return s`<h3>${e.name}</h3>
    ${F({key:`decorations.${t}.count`,label:"Bought, spares included",shown:[String(e.casts),""],of:`decorations.${t}.casts`})}`}function uA(e,t){if(t.bought)return be(s`<b>${t.casts}</b> × ${t.name}, bought.`);let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"",o=O(te(a.units,he(t,"make_")));return be(s`Cast <b>${t.casts}</b> of ${t.name} ahead${n}, from <b>${o}</b> of
      ${t.material}${He(e.whole)?", for the whole run":""}.`)}function dA(e,t,n){return t.bought?lA(t,n):s`<h3>${t.name} ${He(e.whole)?s`<small>for the whole run</small>`:u}</h3>
    ${F({key:`set-up.decorations.${n}.make`,label:`Melt of ${t.material}`,shown:te(a.units,he(t,"make_")),of:`decorations.${n}.make_g`})}
    ${F({key:`decorations.${n}.each`,label:"Each weighs",note:`${R(t.volume_each_ml,2)} ml`,shown:j(a.units,t.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${t.casting_s?s`<p>${to(t.casting_s)} of casting.</p>`:u} ${cA(t,n)}`}function cA(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return u;let i=l=>l===null?"not known":O(Ae(a.units,l)),r=l=>{let d=(o?.embeds??[]).map(l).filter(c=>c!==null);return d.length?O(Ae(a.units,Math.min(...d))):"nothing near"};return s`<h4>Fit of ${e.name}</h4>
    <dl class="facts">
      ${n?s`<div>
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
      ${o?s`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${r(l=>l.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${r(l=>l.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${r(l=>l.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${r(l=>l.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${R(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${Io(`decorations.${t}.fit`,"How the fit is measured",`decorations.${t}.${n?"on_top":"buried"}`)}`}function pA(e,t){let n=Ow(e,t);if(!n)return u;let o=_e(e);return be(s`<b>${O(te(a.units,he(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var Ow=(e,t)=>Tw(e.dust,k(Dt),D("run",`/dust/${t}/name`),t);function mA(e,t){let n=Ow(e,t);if(!n)return u;let o=g("run",`/dust/${t}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,r=F({key:`set-up.dust.${t}`,label:n.name,note:_e(e),shown:te(a.units,he(n,"")),of:`${e.place}.dust.${t}.g`});return s`${r}${i?s`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function Mw(e){let t=e?.cut;return ot({name:"cut",title:"Cut",drawing:e&&(()=>mo("cut",e)),result:t?fA(e,t):be("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>s`${t?hA(e,t):u}
        <div class="all-questions">${Z_()}</div>`})}var fA=(e,t)=>be(s`Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}; a bar is
      ${O(j(a.units,e.piece.fresh_g))} on average, fresh.`);function hA(e,t){return s`<div class="side">${po("cut",e)}</div>
    <div class="weights">
      ${F({key:"cut.bar",label:"A bar on average, fresh",note:gA(t),shown:j(a.units,e.piece.fresh_g),of:"cut.bars_each"})}
      ${F({key:"cut.offcuts",label:"Offcuts",shown:j(a.units,t.offcuts_g),of:"cut.offcuts_g"})}
      ${_A(t)}
    </div>`}function gA(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${R(n,1)} to ${R(o,1)} g`}function _A(e){return e.one_more?.length?s`<ul class="limits">
    ${e.one_more.map(t=>s`<li>Cut to ${t.size_text} along ${t.direction}: ${t.bars} bars from each.</li>`)}
  </ul>`:u}function Bw(e){return ot({name:"label",title:"Label",drawing:bA,result:be($A(e)),about:[["run","/label"]],form:()=>s`<div class="more">${hw()} ${e?fp(e):u}</div>`})}function $A(e){let t=e?.piece.label_g;return!e?.label||t===null||t===void 0?"A draft of the label, not yet with figures.":s`Net weight for the label <b>${O(j(a.units,t,0))}</b>, sold in the ${e.label.market}.`}var bA=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${S`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var Pn=e=>h({...e,of:"studio"});function Fw(){let e=(t,n,o)=>A({of:"studio",name:`ready ${t}`,pointers:[t],summary:s`<span>${n}<small>${pe("studio",t).join(", ")}</small></span>`,body:o});return s`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${e("/lye_solutions","Lye solutions",kA)} ${e("/blends","Melted blends of fats",RA)}
    </div>
  </section>`}var wA=["/prices","/packs","/have","/waste"],yA=e=>(t,n)=>wA.reduce((o,i)=>$(o,`${i}/${W(e)}`)===void 0?o:Or(o,i,e,n),t);function vA(e,t){let n=i=>i===e?t:Array.isArray(i)?i.map(r=>r===e?t:r):i&&typeof i=="object"&&i.name===e?{...i,name:t}:i,o=["/pour/lye_from","/pipe/lye_from","/pour/blend","/pipe/blend"];return i=>o.reduce((r,l)=>{let d=$(r,l);return d===void 0?r:P(r,l,n(d))},i)}function Cw({at:e,name:t,label:n,body:o}){let i=(l,d)=>Lt([["studio",l],["run",vA(t,d)]]),r=`${e}/${W(t)}`;return s`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${No("studio",e,t)}
    </div>
    ${I("studio",r)}
    <div class="row">${Pr({of:"studio",at:e,name:t,label:n,also:yA(t),put:i})}</div>
    ${o}
    <div class="row">
      ${Pn({label:"Made on",at:`${r}/made_on`,date:!0,optional:!0,short:!0})}
      ${Pn({label:"Made by",at:`${r}/from`,optional:!0,short:!0})}
      ${Pn({label:"Note",at:`${r}/note`,optional:!0})}
    </div>
  </div>`}var Ei="/lye_solutions",kA=()=>s`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${pe("studio",Ei).map(e=>Cw({at:Ei,name:e,label:"What you call it",body:xA(e)}))}
    ${ki({of:"studio",at:Ei,label:"Another solution, such as Lye jug A",add:"Add the solution",blank:{strength:"",strength_range:["",""],kept_at:""},then:e=>ne("studio",`${Ei}/${W(e)}/alkali`)})}`;function xA(e){let t=`${Ei}/${W(e)}`,n=D("studio",`${t}/alkali`),o=n||"alkali",i=D("studio",`${t}/strength`);return s`${T({of:"studio",question:"Which alkali is dissolved in it?",at:`${t}/alkali`,chosen:n||void 0,answers:[["NaOH","NaOH, sodium hydroxide"],["KOH","KOH, potassium hydroxide"]],puts:r=>r,then:()=>`${t}/strength`})}
    <div class="row">
      ${Pn({label:`Strength: pure ${o} in 100 g of the solution`,at:`${t}/strength`,unit:"%"})}
      ${Pn({label:"Coldest it stands",at:`${t}/kept_at`,hint:"With its unit: 18 \xB0C, 64 \xB0F. Strong lye crystallises in the cold."})}
    </div>
    <p role="status">${TA(i,o)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${Pn({label:"as weak as",at:`${t}/strength_range/0`,unit:"%",short:!0})}
      ${Pn({label:"or as strong as",at:`${t}/strength_range/1`,unit:"%",short:!0})}
    </div>
    ${I("studio",`${t}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${Ve({of:"studio",at:`${t}/made_from`,name:`what ${e} is dissolved of`,title:"Dissolved by yourself",add:"I dissolve it myself",blank:{purity:""},body:()=>s`<div class="row">
            ${Pn({label:`Purity of the dry ${o}`,at:`${t}/made_from/purity`,unit:"%",short:!0})}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`})}`}function TA(e,t){let n=/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(e)?.[1],o=Number(n?.replace(",","."));if(!n||o>=100)return`As much ${t} as water is 50 %.`;let i=r=>String(Math.round(r*100)/100);return`So ${i(o)} g of pure ${t} and ${i(100-o)} g of water in 100 g.`}var as="/blends",RA=()=>s`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${pe("studio",as).map(e=>Cw({at:as,name:e,label:"What you call it",body:SA(e)}))}
    ${ki({of:"studio",at:as,label:"Another blend, such as Hard fats",add:"Add the blend",blank:{fats:[]},then:e=>L(`find-blend ${e}`)})}`;function SA(e){let t={of:"studio",at:`${as}/${W(e)}/fats`,stays:!0},n=k(t),o=i=>n.some(r=>r.fat===i);return s`${I("studio",t.at)}
  ${n.map((i,r)=>s`<div class="row" id=${C(t,r)}>
        ${Pn({label:ee(String(i.fat)),at:`${t.at}/${r}/share`,unit:"%",short:!0})}
        ${U(t,r,ee(String(i.fat)))} ${I("studio",`${t.at}/${r}/fat`)}
      </div>`)}
  ${n.length?s`<p class="total" role="status">
          ${Ri("Its fats",n.map(i=>i.share))}
        </p>`:u}
  ${Vo({key:`blend ${e}`,label:n.length?"Another fat of it":"Which fats are in it?",offers:DA(),among:"fats",taken:o,take:i=>N(t,{fat:i,share:""},ee(i))})}`}var DA=()=>[...new Set(["pour","pipe"].flatMap(e=>{let t=a.formulas[e]?.now.fats;return Array.isArray(t)?t.map(n=>String($(n,"/fat")??"")).filter(Boolean):[]}))],Lw=e=>k({of:"studio",at:`${as}/${W(e)}/fats`}).map(({fat:t})=>String(t)),Ni=e=>{let t=g("studio",`${Ei}/${W(e)}`)??{},[n,o]=[t.alkali,t.strength].map(i=>String(i??""));return{alkali:n,words:[e,[n,o].filter(Boolean).join(" ")].filter(Boolean).join(": ")}};var ls=e=>`/${e}/lye_from`,us=e=>`/${e}/blend`;function ds(e){let t=pe("studio","/lye_solutions").length>0||g("run",ls(e))!==void 0,n=pe("studio","/blends").length>0||g("run",us(e))!==void 0;if(!t&&!n)return u;let o=[...Iw(e),Ww(e)].filter(Boolean).join(", ");return A({name:`/${e} ready`,pointers:[ls(e),us(e)],summary:`From what stands ready${o&&`: ${o}`}`,body:()=>s`${t?PA(e):u} ${n?MA(e):u}`})}function Iw(e){let t=g("run",ls(e));return typeof t=="string"?[t]:X("run",ls(e)).map(String)}var AA=e=>X(e,"/alkali").map(t=>String($(t,"/alkali")));function PA(e){let t=ls(e),n=J("run",t),o=Iw(e),i=AA(e),r=[...new Set([...pe("studio","/lye_solutions"),...o])],l=r.filter(m=>o.includes(m)||i.includes(Ni(m).alkali)),d=r.filter(m=>!l.includes(m)),c=ke("run",t),p=m=>{let{alkali:_}=Ni(m),b=o.includes(m),w=o.filter(Be=>Be!==m&&(b||Ni(Be).alkali!==_)),x=b?w:[...w,m],K=x.length>1?x:x[0];E("run",`${m}: ${b?"no":"yes"}`,t,K)};return s`<div class="field asked ${c?"wants":""}">
    <p class="question" id="${n}-label">
      Lye solution that is weighed in place of dry ${i.length?Ie(i):"alkali"}
    </p>
    <div class="choice" role="group" id=${n} tabindex="-1" aria-labelledby="${n}-label">
      ${l.map(m=>s`<button type="button" aria-pressed=${o.includes(m)?"true":"false"} @click=${()=>p(m)}>
            ${Ni(m).words}
          </button>`)}
    </div>
    ${ge(n,c,o.length?void 0:"None chosen: the alkali is weighed dry.")}
    ${d.length?s`<p class="hint">Of another alkali than this formula's: ${d.map(m=>Ni(m).words).join(", ")}.</p>`:u}
  </div>`}var Ww=e=>{let t=g("run",us(e));return typeof t=="string"?t:D("run",`${us(e)}/name`)};function OA(e,t){let n=X(e,"/fats").map(({fat:r})=>String(r)),o=new Set(n.flatMap(r=>{let l=a.fats.find(({id:d})=>d===r);return l?[l.id,l.name,l.inci,...l.also_called]:[r]})),i=new Set([...o].map(r=>r.toLowerCase()));return Lw(t).every(r=>i.has(r.toLowerCase()))}var Ip="\0singly";function MA(e){let t=us(e),n=Ww(e),o=[...new Set([...pe("studio","/blends"),...n?[n]:[]])],i=o.filter(d=>d===n||OA(e,d)),r=o.filter(d=>!i.includes(d)),l=g("run",`${t}/share`)!==void 0;return s`${T({question:"Blend of fats that is weighed",at:t,chosen:n||Ip,answers:[[Ip,"None: each fat by itself"],...i.map(d=>[d,d])],puts:d=>d===Ip?void 0:d,hint:r.length?`With fats that this formula has not: ${r.join(", ")}.`:void 0})}
  ${n?l?s`<div class="row">
            ${h({label:`${n}: share of all fats of the formula`,at:`${t}/share`,unit:"%",optional:!0,short:!0})}
          </div>`:s`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${()=>E("run","Its share",t,{name:n,share:""},ne("run",`${t}/share`))}
            >
              Take a share of my own
            </button>`:u}`}var ho="/pour/layers",fo={at:ho,in_order:!0},Wp=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],jl=()=>k(fo);function BA(){let e=t=>jl().some(n=>t in n);return Wp.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function Nw(e){let t=jl(),n=BA();return t.length?s`<h3>
      Layers, lowest first ${e&&_e(e)?s`<small>${_e(e)}</small>`:u}
    </h3>
    ${T({question:"All of them by",at:ho,is_told_elsewhere:!0,chosen:n,answers:Wp,puts:o=>CA(o,e)})}
    <div class="items">${t.map((o,i)=>LA(o,i,n,e))}</div>
    ${G(fo,"One more layer on top",()=>N(fo,{name:FA(t),[n]:""},"layer"))}`:s`<p class="choice">
      ${G(fo,"Pour it in layers",()=>N(fo,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function FA(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function jw(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function CA(e,t){let n=jl(),o=a.is_old?void 0:t,i=(r,l)=>{let d=jw(o,r,l);return e==="parts"||!d||e==="depth"&&"tilted"in r?"":e==="depth"?`${R(d.to_mm-d.from_mm,3)} mm`:`${R(d.mass_each_g,3)} g`};return n.map((r,l)=>{let d=Nl(l),c=e!=="parts"&&n.length>1&&l===n.length-1;return{...d,...c?{rest:!0}:{[e]:i(r,l)}}})}var Nl=e=>fe("run",`${ho}/${e}`,[...Wp.map(([t])=>t),"rest"]);function LA(e,t,n,o){let i=`${ho}/${t}`,r=String(e.name)||`Layer ${t+1}`,l=jw(o,e,t);return s`<div class="part" id=${C(fo,t)} role="group" aria-label="Layer ${r}">
    ${l&&o?IA(o,l,t):s`<p class="part-title">${r}</p>`} ${I("run",i)}
    ${EA(e,t,n,r)}
    ${o&&l?l.colours.map((d,c)=>WA(o,d,t,c)):u}
    ${A({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>s` ${h({label:"Name of the layer",at:`${i}/name`})} ${qA(i,r)} ${UA(i,t)}
        ${U(fo,t,r)}`})}
  </div>`}function IA(e,t,n){return F({key:`pour.layer.${n}`,label:t.name,note:`${Dd(Ae(a.units,t.to_mm-t.from_mm))} thick, ${Dd(j(a.units,t.mass_each_g))} each`,shown:t.g_text===void 0?j(a.units,t.g):te(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.g`})}function WA(e,t,n,o){return F({key:`pour.layer.${n}.${o}`,label:t.name,note:t.teaspoons?`about ${R(t.teaspoons,1)} tsp`:"",shown:qo(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.colours.${o}.g`})}function EA(e,t,n,o){if(n==="parts")return NA(e,t,o);let i="rest"in e;return s`${i?u:h({label:`${o}, ${n}`,at:`${ho}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?HA(t,n):jA(t,n)}
    >
      Takes the rest
    </button>`}function NA(e,t,n){let o=`${ho}/${t}/parts`,i=r=>()=>{f({typed:void 0}),Z("run",o,Math.max(1,(Number(e.parts)||0)+r))};return s`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${h({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function jA(e,t){let n=jl().map((o,i)=>i===e?{...Nl(i),rest:!0}:o.rest?{...Nl(i),[t]:""}:o);E("run","takes the rest",ho,n)}function HA(e,t){let n=`${ho}/${e}`;E("run","amount of the layer",n,{...Nl(e),[t]:""},ne("run",`${n}/${t}`))}function qA(e,t){let n={at:`${e}/colours`,in_order:!0};return s`${k(n).map((o,i)=>{let r=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return s`<div class="part" id=${C(n,i)} role="group" aria-label="${l} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${U(n,i,l)}
      </div>
      ${I("run",r)}
      <div class="row">
        ${h({label:"Colour",at:`${r}/name`})}
        ${h({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${h({label:"Bulk density (for spoons)",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${io("run",r,l)}
    </div>`})}
  ${G(n,"Add a colour",()=>N(n,{name:"",rate:""},"colour"))}`}var Ew=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function UA(e,t){let n=`${e}/tilted`,o=g("run",`${n}/low_side`);return t===k(fo).length-1&&g("run",n)===void 0?s`<p class="hint">The last layer is poured level.</p>`:Ve({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>s`${h({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${T({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:Ew,puts:r=>r})}
        ${A({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!Ew.some(([r])=>r===o),body:()=>h({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var Kt=()=>$(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function Ep(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=Kt()==="depth"?n-o:o;f({typed:void 0}),Z("run",`/pour/line/${Kt()}`,`${R(i,2)} mm`)}function Hw(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=Wt($(a.run.now,`/pour/line/${Kt()}`));return n===void 0?e.pour.below_brim_mm:Kt()==="depth"?t-n:n}function zA(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=l=>t((l.clientY-e.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,r)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,r)}function JA(e){if(!a.measured)return u;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=Hw(e),{share:o,h:i}=ww(e,t-n),r=c=>zA(c,p=>Ep(e,n+p*i)),l=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),Ep(e,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),s`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${R(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${O(Ae(a.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function KA(e){let{pour:t}=e,n=O(Ae(a.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each",r=_e(e);return be(s`${o}, <b>${O(j(a.units,t.mass_each_g))}</b> ${i}; make
      <b>${O(j(a.units,t.make_g))}</b>${r?` for ${r}`:""}.`)}var qw=()=>Kt()==="depth"?"Depth":"Below brim";function Uw(e){return ot({name:"pour",title:"Pour",drawing:e&&(()=>mo("pour",e)),result:e?KA(e):be(`${VA()}.`),about:[["run","/pour"]],form:()=>s`${e?QA(e):GA()}
        <div class="more">
          ${Hl("pour")} ${ds("pour")} ${Nw(e)} ${Ka("pour")}
        </div>`})}function VA(){let e=D("run",`/pour/line/${Kt()}`);return e?`${e} ${Kt()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function QA(e){let{pour:t}=e,n=`${e.place}.pour`,o=i=>()=>Ep(e,Hw(e)+i);return s`<div class="side">
      ${po("pour",e,JA(e))} ${zw(e)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${h({label:qw(),at:`/pour/line/${Kt()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${F({key:"pour.each",label:"Weigh into each",shown:j(a.units,t.mass_each_g),note:`${R(t.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${F({key:"pour.mm",label:"1 mm more or less",shown:Oe(a.units,t.ml_per_mm,2),note:`${tn(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${F({key:"set-up.pour.make",label:"Base to make",note:_e(e),shown:j(a.units,t.make_g),of:`${n}.make_g`})}
      ${F({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var GA=()=>s`<div class="side">
    ${zw()} ${I("run","/pour/line")}
    ${h({label:qw(),at:`/pour/line/${Kt()}`,unit:"mm"})}
  </div>`,Hl=e=>s`<button type="button" @click=${()=>Xe(e)}>
    Change the formula of the ${e==="pour"?"base":"topping"}
  </button>`;function zw(e){let t=n=>{if(n===Kt())return;let o=e&&!a.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;E("run","pour line","/pour/line",{[n]:o===void 0?"":`${R(o,3)} mm`})};return ue("The pour line is measured",Kt(),[["below_brim","From the brim"],["depth","From the floor"]],t)}var YA=[0,50,80,100];function Jw(e){let t=e?.pipe;return ot({name:"pipe",title:"Pipe",drawing:t&&(()=>mo("pipe",e)),result:t?ZA(e,t):be("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>t?XA(e,t):eP()})}function ZA(e,t){let n=_e(e);return be(s`Pipe <b>${R(t.volume_each_ml,0)} ml</b> on each, ${O(j(a.units,t.mass_each_g))} at this
      whipped density; make <b>${O(j(a.units,t.make_g))}</b>${n?` for ${n}`:""}.`)}function XA(e,t){return s`<div class="side">
      ${po("pipe",e)}
      ${F({key:"pipe.each",label:"Topping on each",shown:Oe(a.units,t.volume_each_ml),note:`${R(t.in_headspace_each_ml,1)} ml of it below the brim`,of:`${e.place}.pipe.volume_each_ml`})}
      ${F({key:"set-up.pipe.make",label:"Topping to make",note:_e(e),shown:j(a.units,t.make_g),of:`${e.place}.pipe.make_g`})}
      ${F({key:"pipe.density",label:"Whipped density",note:`overrun ${R(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],of:`${e.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${Hl("pipe")} ${ds("pipe")}
    </div>
    <div class="weights">${gc(t)} ${Gw()} ${tP(e)} ${aP(e)}</div>
    <div class="more">${hc(t)} ${fc()}</div>`}var cs=e=>e===0?"pipe":`pipe.whipping${e}`,ps=(e,t)=>`${e.place}.pipe.whippings.${t}`;function Kw(e,t){let n=Ba(e,t);return n?s`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function eP(){return s`<div class="more">${hc()}</div>
    <div class="side">${Gw()} ${g("run","/pipe/whip_now")===void 0?u:Qw()}</div>
    <div class="weights">${gc()} ${Hl("pipe")} ${ds("pipe")}</div>
    <div class="more">${fc()}</div>`}var Vw=e=>_e(e)?s`<small>${_e(e)}</small>`:u;function tP(e){return s`<h3>Today's bowl ${Vw(e)}</h3>
    ${Qw()} ${e.whippings.map((t,n)=>nP(e,t,n))}`}function nP(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,r=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${t.pieces} to make.`;return s`${Kw(e,t)}
  ${o==null?u:F({key:`${cs(n)}.now`,label:"Enough for",note:r,shown:[V(o,"piece"),""],size:"weigh",of:`${ps(e,n)}.pieces_now`})}
  ${iP(e,t,n)}`}function Qw(){let e=g("run","/pipe/whip/holds"),t=e===void 0?Ir():{holds:e,net:""};return Ve({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:t,body:oP})}function oP(){return s`<div class="row">
    ${h({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${Wr("/pipe/whip_now")}
  </div>`}function iP(e,t,n){return t.readings?.length?A({name:`${cs(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>rP(e,t,n)}):u}function rP(e,t,n){return s`<table class="readings">
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
        ${t.readings?.map(o=>s`<tr class=${o.planned?"planned":""}>
              <th scope="row">${R(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${R(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${Io(`${cs(n)}.readings`,"Show the calculation",`${ps(e,n)}.readings`)}`}function Gw(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(D("run",e))?.[1]?.replace(",",".")),n=Ne("run",e);return s`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${no("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${YA.map(o=>s`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>Z("run",e,`${o} %`)}
          >
            ${sP(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${h({label:"Headspace filled, as a share",at:e,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function sP(e){let t=52*(e/100);return s`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${S`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function aP(e){let t=e.whippings.map(i=>({one:i,words:lP(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?u:s`<h3>Limits of whisk, bowl and time ${Vw(e)}</h3>
    ${t.map(({one:i,words:r})=>s`${Kw(e,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>s`<li class=${i.sets?"binds":""}>
            ${i.sets?s`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${Io("pipe.limits","How the limits come about",`${ps(e,0)}.limits`)}`}function lP({piping_s:e,lye_spoonfuls:t}){return[e?`${to(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${to(t.altogether_s)}`:""].filter(Boolean).join("; ")}function Zw(e){return ot({name:"lye",title:"Lye",drawing:dP,result:e?Yw(e).map(uP):be("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>s`${e?s`<div class="more jugs">${Yw(e).map(cP)} ${mP(e)}</div>`:u}
        <div class="more">${pw()} ${mw(e)}</div>`})}function Yw(e){let{pieces:t}=e.batch,n={slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,place:`${e.place}.pour`,pieces:t,key:"pour"},o=e.whippings.map((i,r)=>{let l=Ba(e,i);return{slot:"pipe",title:`Lye for the topping${l&&`, ${l}`}`,batter:i,place:ps(e,r),pieces:t,key:cs(r)}});return[n,...o]}function uP({title:e,batter:t,slot:n,pieces:o}){let i=Xn(n,o).length?" \u26A0":"";return be(s`${e}: ${R(t.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${et(t.superfat_percent.effective)}${i}</b>.`)}var dP=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${S`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function cP({slot:e,title:t,batter:n,place:o,pieces:i,key:r}){let{effective:l}=n.superfat_percent,d=Xn(e,i).length>0,c=`danger-set-up-${r.replaceAll(".","-")}`,p=r===e;return s`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${F({key:`set-up.${r}.strength`,label:"Lye strength",note:`water ${R(n.water_to_pure_alkali,2)} : 1 to alkali; water ${R(n.water_percent_of_fats,1)} % of the fats`,shown:[`${R(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${F({key:`set-up.${r}.superfat`,label:"Superfat as weighed",shown:[`${et(l)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:r==="pour"?"superfat_as_weighed":void 0})}
    ${xr(e,c,i)} ${Xw(n.superfat_percent)} ${pP(n,o,r)}
    ${!p||g(e,"/superfat")===void 0?u:h({label:"Planned superfat",of:e,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:a.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Xw(e){let{low:t,high:n,likely_low:o,likely_high:i,uncertainties:r}=e,l=`It lies between ${et(t)} and ${et(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${et(o)} and ${et(i)}.`,c=r[0],p=c?s` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return Sd(t)?s`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:s`<p class="aside of-plan">${l}${d} Some fat is left over even at the lowest.${p}</p>`}function pP(e,t,n){return e.heat?s`${ey(e.heat)} ${Io(`${n}.heat`,"How the heat is worked out",`${t}.heat`)}`:u}function ey(e){let t=i=>O(Ng(a.units,i)),n=e.cooling.map(i=>`${i.shortest_min*60?to(i.shortest_min*60):"at once"} to ${to(i.longest_min*60)} in ${i.in}`),o=e.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at ${t(e.boils_at_c)}.`;return s`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function mP(e){let t=e.lye_pot;if(!t)return u;let{units:n}=a,o=(i,r,l,d,c="")=>F({key:`pot.${i}`,label:r,note:c,shown:l,size:"weigh",of:`${e.place}.lye_pot.${d}`});return s`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${R(t.strength_percent,1)} %${_e(e)&&`; ${_e(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",te(n,he(t,"water_")),"water_g")}
    ${t.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,te(n,he(i,""),"down"),`alkalis.${r}.g`))}
    ${o("lye","Lye solution in the pot",te(n,he(t,"lye_")),"lye_g",fP(t))}
    ${t.shares.map((i,r)=>s`${o(`share.${r}`,`Out of it for ${i.batter}`,te(n,he(i,"lye_"),"down"),`shares.${r}.lye_g`,`superfat then ${et(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,te(n,he(i,"top_up_")),`shares.${r}.top_up_g`):u}
        ${xr(r===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?Xw(i.superfat):u}`)}
    ${t.left_g?s`<p class="aside of-plan">
            ${O(te(a.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${t.heat?ey(t.heat):u}
  </div>`}function fP(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=he(e,"lye_"),i=te(a.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${O(i)} with the pot: make up with water to that after cooling`}var ms=new Map,hP=()=>ms.clear(),gP=e=>typeof e?.owned=="number"?e.owned:void 0;function Np(e){let t=Ze(e,a.files?.moulds);return ms.has(t)||(ms.set(t,void 0),_P(t)),ms.get(t)}async function _P(e){try{ms.set(e,gP(we((await Fe(e)).text))),Q()}catch(t){if(!(t instanceof y))throw t}}async function ty(e,t){let n=Np(e);n!==void 0&&(Z("studio",t,n),B(`${n} kept in the studio`),await $P(Ze(e,a.files?.moulds)),ce())}async function $P(e){let t=await Se(Ye,e);t.shipped||t.theirs||(De(t,P(t.now,"/owned",void 0)),await Yt(t),hP())}var ql=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],Ul=e=>e[0].toUpperCase()+e.slice(1),zl=e=>h({...e,of:"studio"});function ny(){return!Tn()&&a.run.file&&a.open.has("folded studio days")&&fl("run"),s`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${A({of:"studio",name:"days",pointers:["/days",...zt()?[]:["/work"]],summary:s`<span>When you work${s`<small>${bP()}</small>`}</span>`,body:wP})}
  </section>`}function bP(){let e=g("studio","/days/making")??{};return ql.filter(t=>e[t]).map(t=>`${Ul(t)} ${String(e[t])}`).join(", ")}var wP=()=>s`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${ql.map(e=>zl({label:Ul(e),at:`/days/making/${e}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${I("studio","/days")} ${I("studio","/days/making")} ${yP()} ${vP()} ${xP()}
    ${zt()?s`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:s`<p class="question">How long the work takes you</p>
            <div class="row">${hl(g("studio","/days")!==void 0)}</div>
            ${I("studio","/work")}`}`;function yP(){let e="/days/small_jobs",t=J("studio",e),n=X("studio",e),o=l=>{let d=ql.filter(p=>p===l!==n.includes(p)),c=p=>Rn(P(p,e,d.length?[...d]:void 0),"/days");ct("studio",`${Ul(l)}: ${n.includes(l)?"no":"yes"}`,c)},i=Ne("studio",e),r=ql.filter(l=>n.includes(l)||!D("studio",`/days/making/${l}`));return s`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${t}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${t} tabindex="-1" aria-labelledby="${t}-label">
      ${r.map(l=>s`<button type="button" aria-pressed=${n.includes(l)?"true":"false"} @click=${()=>o(l)}>
            ${Ul(l)}
          </button>`)}
    </div>
    ${ge(t,i,"Without any, these wait for a making day.")}
  </div>`}var fs={of:"studio",at:"/days/off",and:e=>Rn(e,"/days")};function vP(){return s`<p class="question">Days off and holidays</p>
    ${k(fs).map((e,t)=>kP(String(e),t))}
    ${G(fs,"Add a day off",()=>N(fs,"","A day off"))}`}function kP(e,t){let n=`/days/off/${t}`,[o,i=""]=e.split("/"),r=J("studio",n),l=ke("studio",n),d=(m,_)=>Z("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,b,w)=>s`<div class="field short ${l?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${M(b)}
        @input=${x=>w(x.target.value)}
        @blur=${Eo}
        aria-invalid=${l?"true":"false"}
        aria-describedby=${l?`${r}-said`:u}
      />
      ${m===r?ge(r,l):u}
    </div>`,p=o?`off on ${oe(o)}`:`day off ${t+1}`;return s`<div class="row" id=${C(fs,t)} role="group" aria-label=${p}>
    ${c(r,"First day off",o,m=>d(m,i))}
    ${c(`${r}-last`,"Last, if there are several",i,m=>d(o,m))} ${U(fs,t,p)}
  </div>`}function xP(){let e=(t,n,o)=>zl({label:n,at:`/days/${t}`,count:!0,optional:!0,short:!0,hint:o});return s`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${e("pots_owned","Pots for the base")} ${e("bowls_owned","Bowls for the topping")}
      ${e("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${e("rack_places","Pieces that can cure at once")}
      ${zl({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${TP()}
    ${$(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?s`<p class="hint">Without the hours of a making day these are of no use.</p>`:u}`}var TP=()=>Ve({of:"studio",at:"/days/one_lye_a_day",name:"the shared lye",title:"One pot of lye solution for several batches of a day",add:"Make one pot of lye solution for a day's batches",blank:{holds:"",saves:""},body:()=>{let e=(t,n,o,i={})=>zl({label:n,at:`/days/one_lye_a_day/${t}`,unit:o,short:!0,...i});return s`<p class="hint">Made the evening before and shared by weight, where the batches' lyes are alike.</p>
        <div class="row">
          ${e("holds","Pot holds","l",{hint:"To the brim; filled to half."})}
          ${e("saves","Each further batch takes less by","min")}
          ${e("pot_tare","Empty pot","g",{optional:!0,hint:"Where the full one is weighed with it."})}
        </div>`}});var RP={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},oy=e=>({run:e,studio:e}),jp=e=>oy(`/losses/${e}`);function Hp(e,t){return RP[e].map(({name:n,label:o,unit:i,optional:r})=>Me(oy(`/losses/${e}/${n}`),{label:t?`${t}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:r}))}var qp={holds:"",paid:""},Jl=e=>({of:"studio",at:`/packs/${W(e)}`,in_order:!0,and:(t,n)=>n?t:vi(Rn(t,"/packs"),[`/serves_as/${W(e)}`])});function ry(e){let t=a.fats.find(n=>n.id===e||n.name===e);return t?[t.id,t.name,t.inci,...t.also_called]:[e]}function sy(e,t){let n=new Set(ry(t).map(o=>o.toLowerCase()));return pe("studio",e).find(o=>n.has(o.toLowerCase()))}var Qo=e=>sy("/packs",e),ay=e=>At().includes(e)||a.fats.some(t=>t.id===e)?"g":void 0,ly="money packs";function uy(e){return s`${pe("studio","/packs").map(t=>SP(t,e))}
  ${Vo({key:"pack",label:"Which material comes in packs?",offers:At(),taken:t=>Qo(t)!==void 0,take:Kl})}`}function SP(e,t){let n=Jl(e),o=ee(e);return s`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${k(n).map((i,r)=>AP(n,r,o,ay(e),t))}
    <div class="row">
      ${G(n,s`Another pack of ${o}`,()=>N(n,qp,`A pack of ${o}`))}
      ${h({of:"studio",label:"Lost beside the batch",at:`/waste/${W(e)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
      ${DP(e)}
    </div>
  </div>`}var iy=e=>`/serves_as/${W(e)}`;function DP(e){let t=iy(e),n=D("studio",t),o=new Set(ry(e)),i=[...new Set([...At(),...pe("studio","/packs")])].filter(l=>!o.has(l)&&g("studio",iy(l))===void 0),r=l=>d=>Rn(P(d,t,l||void 0),"/serves_as");return!n&&(At().some(l=>o.has(l))||!i.length)?u:$e({label:"Another make of",of:"studio",at:t,answers:i.map(l=>[l,ee(l)]),unsaid:"nothing: a material of its own",optional:!0,take:l=>ct("studio",`${ee(e)}: ${l?ee(l):"a material of its own"}`,r(l))})}function AP(e,t,n,o,i){let r=`${e.at}/${t}`,l=(c,p,m={})=>h({of:"studio",label:p,at:`${r}/${c}`,short:!0,...m}),d=g("studio",`${r}/density`)!==void 0||Ne("studio",`${r}/holds`);return s`<div class="row" id=${C(e,t)} role="group" aria-label="Pack ${t+1} of ${n}">
    ${l("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${l("paid","Paid for it",{told:i})} ${PP(r)}
    ${l("as_of","Day of the price",{optional:!0,date:!0})}
    ${d?l("density","Density of what it holds",{unit:"g/ml",optional:!0}):u}
    ${U(e,t,`pack ${t+1} of ${n}`)}
  </div>`}function PP(e){let t=`${e}/from`,n=pe("studio","/sellers");return n.length?$e({label:"From",of:"studio",at:t,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):h({of:"studio",label:"From",at:t,optional:!0,short:!0})}function Kl(e){let t=`/packs/${W(e)}`,[n,o]=[`/prices/${W(e)}`,`/money/prices/${W(e)}`],i=Mi().length?g("run",o):void 0,r=[i,g("studio",n)].flatMap(MP),l=r.length?[...r,qp]:[qp];Lt([["studio",c=>OP(P(vi(c,[n]),t,l))],...i!==void 0?[["run",c=>vi(c,[o])]]:[]]),B(r.length?`The price of ${ee(e)} is its first pack now`:`${ee(e)} added`),je("studio",ly),z(Nt(C(Jl(e),l.length-1)))}var OP=e=>$(e,"/currency")?e:P(e,"/currency",$l());function MP(e){let t=$(e,"/paid");if(!t)return[];let n=$(e,"/confirmed");return[{holds:$(e,"/for")??"",paid:t,...n===void 0?{}:{confirmed:n}}]}var dy=e=>s`<button
    type="button"
    aria-label="Another pack size of ${ee(e)}"
    @click=${()=>Kl(e)}
  >
    Another pack size
  </button>`;function cy(e){let t=Qo(e),n=X("studio",Jl(t).at).length,o=()=>{je("studio",ly),z(Nt(C(Jl(t),0)))};return s`<div class="row">
    <p>${ee(e)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${ee(e)}" @click=${o}>To its packs</button>
  </div>`}function py(){let e=t=>`/have/${W(t)}`;return s`${pe("studio","/have").map(t=>{let n=ay(t),o=n?void 0:"Such as 12 pieces, or 1 kg";return s`<div class="row">
      ${h({of:"studio",label:ee(t),at:e(t),unit:n,hint:o,short:!0})}
      ${No("studio","/have",t,ee(t))}
    </div>`})}
  ${Vo({key:"have",label:"Which material stands on the shelf?",offers:At(),taken:t=>sy("/have",t)!==void 0,take:t=>E("studio",`${ee(t)} added`,e(t),"",ne("studio",e(t)))})}`}var my=({key:e})=>`money ${e}`;function gy(){if(!zt())return u;let e=FP($l());return!Tn()&&e.some(t=>a.open.has(`folded studio ${my(t)}`))&&ul(),s`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${BP()}
    <div class="folds">
      ${e.map(t=>A({of:"studio",name:my(t),pointers:t.pointers,summary:s`<span>${t.title}${t.told?s`<small>${t.told}</small>`:u}</span>`,body:t.body}))}
    </div>
  </section>`}var BP=()=>g("run","/money/currency")===void 0?u:s`<div class="row">
        ${Go({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,Go=e=>h({...e,of:"studio"}),Vl=e=>pe("studio",e).map(ee).join(", ");function FP(e){let t=(i,r,l={})=>Go({label:r,at:i,told:e,short:!0,...l}),n=(i,r)=>t(i,r,{optional:!0,takes_part:!0}),o=(i,r="")=>{let l=D("studio",i);return l&&`${l}${r}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste","/serves_as"],told:Vl("/packs"),body:()=>uy(e)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:Vl("/sellers"),body:()=>LP(t)},{key:"have",title:"On the shelf",pointers:["/have"],told:Vl("/have"),body:py},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:k(ji).map(i=>ee(String($(i,"/material")))).join(", "),body:WP},{key:"work",title:"Work",pointers:["/work"],told:o(Uo("paid_an_hour"),` ${e} an hour`),body:()=>NP(t)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${e} each batch`),body:()=>s`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:jP},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>s`<div class="row">
          ${Go({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:Vl("/asking"),body:()=>HP(t)}]}var CP=e=>(t,n)=>Object.entries(t.packs??{}).reduce((o,[i,r])=>r.reduce((l,{from:d},c)=>d===e?P(l,`/packs/${W(i)}/${c}/from`,n):l,o),t);function LP(e){let t=(n,o)=>`/sellers/${W(n)}/${o}`;return s`${pe("studio","/sellers").map(n=>s`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${No("studio","/sellers",n)}
        </div>
        <div class="row">
          ${Pr({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:CP(n)})}
          ${e(t(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${e(t(n,"postage_free_from"),"Free from",{optional:!0})}
          ${Go({label:"From ordering to having it",at:t(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${ki({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>ne("studio",t(n,"postage"))})}`}var ji={of:"studio",at:"/packaging"},IP=e=>!At().includes(e)&&!a.fats.some(t=>t.id===e);function WP(){let e=t=>k(ji).some(n=>$(n,"/material")===t);return s`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${k(ji).map((t,n)=>EP(String($(t,"/material")??""),n))}
    ${Vo({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(t=>pe("studio",t)).filter(IP),taken:e,take:t=>N(ji,{material:t,each_piece:""},t)})}`}function EP(e,t){let n=Qo(e)!==void 0||g("studio",`/prices/${W(e)}`)!==void 0;return s`<div class="row" id=${C(ji,t)}>
    ${Go({label:`${ee(e)}, each piece`,at:`/packaging/${t}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?u:s`<button type="button" aria-label="Say its price: ${e}" @click=${()=>Kl(e)}>
            Say its price
          </button>`}
    ${U(ji,t,e)}
  </div>`}function NP(e){let t=g("studio","/work")!==void 0;return s`<div class="row">
      ${e(Uo("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:t})} ${hl()}
    </div>
    ${I("studio","/work")}`}var fy=(e,t)=>T({of:"studio",question:e,at:`/tax/${t}`,chosen:D("studio",`/tax/${t}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),jP=()=>s`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${Ve({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>s`<div class="row">${Go({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${fy("The prices you pay are","prices_paid")} ${fy("The prices you ask are","prices_asked")}`})}`,hy=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function HP(e){let t=n=>`/asking/${W(n)}`;return s`${pe("studio","/asking").map(n=>qP(n,t(n),e))}
  ${ki({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>ne("studio",t(n))})}
  ${UP(e)}`}function qP(e,t,n){let o=g("studio",t)??{},i=hy.map(([l])=>l).find(l=>o[l]!==void 0),r=l=>Go({label:l,at:`${t}/${i}`,unit:"%",short:!0});return s`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${No("studio","/asking",e)}
    </div>
    <div class="row">${Pr({of:"studio",at:"/asking",name:e,label:"What you call it"})}</div>
    ${T({of:"studio",question:"Its price comes by",at:t,chosen:i,answers:hy,puts:l=>({[l]:""}),then:l=>`${t}/${l}`})}
    ${i?s`<div class="row">
            ${i==="price"?n(`${t}/price`,"Price of a piece"):r(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:u}
  </div>`}var hs={of:"studio",at:"/price_endings"},UP=e=>s`<p class="question">A price ends in</p>
    ${k(hs).map((t,n)=>s`<div class="row" id=${C(hs,n)}>
          ${e(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${U(hs,n,`ending ${n+1}`)}
        </div>`)}
    ${G(hs,"Add an ending",()=>N(hs,"","An ending"))}`;var zP=e=>se()&&Qo(e)===void 0&&Mi().length>0;function _y(){if(!zt())return s`<button type="button" @click=${JP}>Add what you paid</button>`;let e=(t,n)=>{let o=`/${W(t)}/${n}`;return{run:_l.run+o,studio:_l.studio+o}};return s`<div class="row">
      ${Me(cn,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${At().map(t=>Qo(t)===void 0||g("run",e(t,"paid").run)!==void 0?s`<div class="row">
              ${Me(e(t,"paid"),{label:`${ee(t)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${Me(e(t,"for"),{label:`for how much ${ee(t)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${zP(t)&&on(e(t,"paid"))?dy(t):u}
            </div>`:cy(t))}
    </div>
    ${At().length?u:s`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function JP(){let e=se()?"studio":"run",t=e==="studio"?cn.studio:cn.run;E(e,"Prices added",t,"",ne(e,t))}var Hi=e=>({run:e,studio:e}),Up=e=>({run:`/pipe/${e}`,studio:`/${e}`}),KP=Hi("/scales"),$y=Hi("/spoilage"),VP=Hi("/pots");function zp(e){return ot({name:"studio",title:"My studio",result:be(QP()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>GP(e)})}function QP(){let e=a.beside.studio?.file;return e?s`What is the same in every run, kept in ${e}.`:s`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function GP(e){let t=YP(e),n=[...t.flatMap(o=>o.all),...nt()?[Va]:[]];return s`${se()?u:s`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Wd(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say. Packs and
              sellers, your work, tax, fees and ways of selling can then be kept there too.
            </p>`}
    <div class="studio-sections">
      ${t.map(({title:o,all:i,body:r})=>s`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${oo(o,i)}
            </div>
            ${r()}
          </section>`)}
    </div>
    ${se()?s`${gy()} ${Fw()} ${ny()}`:u}`}function YP(e){let t=pt(),n=[{title:"Scales",all:[KP],body:ZP},{title:"Losses",all:[jp("pour"),...t?[jp("pipe")]:[]],body:()=>XP(t,e)},{title:"Rejects",all:[$y],body:tO},{title:"Pot and lye jug",all:[VP],body:nO},{title:"Moulds owned",all:by().map(({shared:o})=>o),body:iO},{title:"Prices paid",all:Mi(),body:_y}];return t&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(Up),body:oO},{title:"Weigh-cups",all:[],body:K_}),se()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[Wi],body:Fp}),n}function ZP(){let e=(t,n)=>s`${Me(Hi(`/scales/${t}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:t==="large"?"scale_step":void 0})}
    ${Me(Hi(`/scales/${t}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return s`<div class="row">${e("large","Large scale")} ${e("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function XP(e,t){return s`<div class="row">
      ${Hp("pour",e?"Base":void 0)} ${e?Hp("pipe","Topping"):u}
    </div>
    ${t?eO(t):u}`}function eO({pour:e,pipe:t,...n}){let o=_e({pour:e,pipe:t,...n}),i=(r,{in_pieces_g:l,lost_g:d})=>`${r}: ${O(j(a.units,l))} in the pieces, ${O(j(a.units,d))} lost.`;return s`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",e)} ${t?i("Topping",t):""}
  </p>`}var tO=()=>Me($y,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function nO(){let e=(t,n,o)=>Me(Hi(`/pots/${t}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return s`<div class="row">
    ${e("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${e("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function oO(){let e=(n,o,i,r=!1)=>Me(Up(n),{label:o,unit:i,short:!0,optional:!0,is_due:r,takes_part:n!=="bag_holds"}),t=n=>on(Up(n))!==void 0;return s`<div class="row">
    ${e("bowl/holds","Bowl holds","l",t("bowl/whisk_needs"))}
    ${e("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${e("bag_holds","One bag holds","ml")}
    ${e("lye_spoon/holds","Lye spoon holds","ml",t("lye_spoon/time_between"))}
    ${e("lye_spoon/time_between","From one spoonful to the next","s",t("lye_spoon/holds"))}
  </div>`}function by(){return["/pour",...k(Pe).map((t,n)=>Li(n))].flatMap(t=>{let n=D("run",`${t}/mould`);return n?[{mould:n,shared:{run:Xb(t),studio:`/moulds_owned/${W(Ed(n))}`}}]:[]})}function iO(){return s`<div class="row">
    ${by().map(({mould:e,shared:t})=>{let n=a.files?.moulds.find(r=>r.file===e)?.name??e,o=on(t)===void 0?Np(e):void 0,i=()=>{ty(e,`/moulds_owned/${W(Ed(e))}`)};return s`${Me(t,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&se()?s`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function Jp(e){let t=e&&xi(e);return s`${sO(e)}
    <div class="set-up">${wy(t)} ${rO()} ${zp(t)}</div>`}function wy(e){return s`${Uw(e)} ${pt()?Jw(e):u}
  ${kw()?Rw(e):u} ${xw()?Dw(e):u}
  ${nt()?Mw(e):u} ${Zw(e)} ${Bp()?Bw(e?.whole):u}`}function rO(){return s`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${pt()?u:s`<button type="button" @click=${V_}>Add a topping</button>${Q_()}`}
      ${uw()} ${Y_()}
      ${Bp()?u:s`<button type="button" @click=${fw}>Draft the label</button>`}
    </div>
  </section>`}function yy(e=u){return s`<div class="row">
    ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${yi("Mould","/pour/mould",a.files?.moulds)}
    ${yi("Base","/pour/formula",a.files?.formulas)}
    ${pt()?yi("Topping","/pipe/formula",a.files?.formulas):u} ${e}
  </div>`}function sO(e){return s`<section class="order-of" aria-labelledby="run-title">
    ${typeof a.run.now.note=="string"?s`<p class="aside">${a.run.now.note}</p>`:u}
    ${yy(e?aO(e):u)}
    <div class="batches">${e?gw(e):u} ${Ap()} ${Op()}</div>
  </section>`}function aO(e){let{sell:t,make:n,fillings:o,cavities:i,casts:r,batches:l}=e.pieces,d=He(e)?`${l} batches, ${V(o,"filling")}`:Fa(o,i);return F({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} ${e.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",of:"pieces.make"})}function lO(){let t=(a.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>a.formulas[n]).filter(uO);return[kt({part:"Run"},()=>[yy(),Ap(),Op()]),...t.map(n=>kt({part:String(a.formulas[n].now.name||"Formula")},()=>F$(n))),wy(),zp()]}var uO=(e,t,n)=>n.findIndex(o=>a.formulas[o]===a.formulas[e])===t;Vg(lO);var dO={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function vy(e){let t=r=>r.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(r=>!t(r))],o=r=>s`<ul>
      ${r.map(l=>s`<li class=${l.severity}><strong>${dO[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return s`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?s`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}var Kp="begin-title";function ky(e){let{record:t}=a;if(t.run!==a.run.file||t.version===void 0)return u;let{number:n,since:o}=e,i=o===void 0?void 0:Co(n,o);if(i)return cO(i,e);if(t.beginning?.batch===n)return pO(t.beginning,e);let r=()=>{Ib(n),z(L(Kp)),requestAnimationFrame(()=>document.querySelector(".begin-record.asked")?.scrollIntoView({block:"nearest"}))};return s`<div class="begin-record">
    <button type="button" class=${e.is_due?"strong":""} @click=${r}>Lye is mixed: begin the record</button>
  </div>`}function cO(e,{show:t}){let{told:n}=a.record,o=()=>{gr(e.begun.id),t()};return s`<div class="begin-record is-begun">
    ${Ll(e)}
    <button type="button" class="strong" @click=${o}>Note what happens</button>
    ${n?.batch===e.begun.id&&n.remarks.length?s`<ul class="begin-remarks" role="status">
            ${n.remarks.map(i=>s`<li>${i}</li>`)}
          </ul>`:u}
  </div>`}function pO(e,t){let{number:n,words:o,seen:i,is_struck:r}=t,l=Co(n),{complaint:d,is_asking:c}=e,p=!r&&!c&&!Hn(n);return s`<div class="begin-record asked" role="group" aria-labelledby=${Kp}>
    <p id=${Kp} tabindex="-1"><b>Begin the record of ${o}?</b> Its plan is kept with it as it is weighed.</p>
    ${l?mO(l,t):u}
    <div class="row">
      <div class="field">
        <label for="code-to-begin">Code on the mould</label>
        <input
          id="code-to-begin"
          autocomplete="off"
          .value=${M(e.code)}
          aria-describedby="code-to-begin-said"
          @input=${m=>Wb(m.target.value)}
        />
        <p class="hint" id="code-to-begin-said">Left blank: the day and the next letter.</p>
      </div>
      <button type="button" class="strong" ?disabled=${!p} @click=${()=>{bp(i)}}>
        ${c?"Beginning ...":l?"Begin another making":"Begin the record"}
      </button>
      <button type="button" @click=${$p}>Not yet</button>
    </div>
    ${r?s`<p class="complaint">The weights are not those of what is typed.</p>`:u}
    ${d?fO(d,i):u}
  </div>`}var mO=(e,{show:t})=>s`<p>
      There is a record of it already, <b>${e.begun.code}</b>: ${ns(e)}. If this is the same soap, go on
      in that one.
    </p>
    <p>
      <button
        type="button"
        @click=${()=>{$p(),gr(e.begun.id),t()}}
      >
        Go on in ${e.begun.code}
      </button>
    </p>`;function fO(e,t){let n=e.choices??[];return s`<div role="alert">
    <p class="alarm">
      ${n.length||e.field==="begin"?`${e.problem}.`:`${H(e)}.`}
    </p>
    ${n.map(o=>s`<button type="button" class="answer" @click=${()=>{Eb(o,t)}}>
          ${hO(o)}
        </button>`)}
  </div>`}function hO(e){let{confirmed:t,lot:n}=e;return e["beyond-stock"]?`There is more than the records say: take it of lot ${e["beyond-stock"]}`:n?`Take ${n}`:`It is so: ${t??""}`}function xy(e,t){let n=e?.batches.findIndex(({numbers:l})=>l.includes(t))??-1;if(!e||n<0)return;let o=e.batches[n],i=t===1,r=o.weigh_out.filter(({vessel:l})=>l!=="melt"||i);return{plan:e,batch:o,place:`batches.${n}`,vessels:r,mark:o.mark}}function qi(e){let t=jn(e);return t?.finished_at?"done":t||Hn(e)?"under way":"not begun"}var gO=()=>Math.max(a.plan?.pieces.batches??0,...a.bench.batches.map(({batch:e})=>e));function _O(e){let{chosen:t}=a.bench;if(t!==void 0&&t<=e)return t;let n=Array.from({length:e},(i,r)=>r+1),o=i=>n.find(r=>qi(r)===i);return o("under way")??o("not begun")??1}function Vp(){let e=gO(),t=_O(e),n=jn(t),o=xy(a.plan,t);return{number:t,of:e,kept:n,planned:o,weights:n?xy(n.plan,t):o}}var pn=({kept:e})=>!e&&a.is_old,Ui=({plan:e,batch:t})=>e.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===t.pieces));var $O=6,bO={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function Ry({number:e,of:t}){if(t<2)return u;let n=Array.from({length:t},(i,r)=>r+1),o=i=>`Batch ${i}, ${qi(i)}`;return t>$O?s`<select
      aria-label="Which batch is weighed"
      @change=${i=>Ty(Number(i.target.value))}
    >
      ${n.map(i=>s`<option value=${i} ?selected=${i===e}>${o(i)}</option>`)}
    </select>`:ue("Which batch is weighed",String(e),n.map(i=>[String(i),s`<span class="status" aria-hidden="true">${bO[qi(i)]}</span> ${i}<small>
          ${qi(i)}</small
        >`]),i=>Ty(Number(i)))}function Ty(e){dh(e),B(`Batch ${e}, ${qi(e)}`)}var Ql="";function Sy(e){let{kept:t,number:n}=e;if(!t)return u;if(t.finished_at)return wO(e,t.finished_at);let i=(e.weights?.vessels??[]).flatMap(l=>l.rows).filter(({key:l})=>!qn(n,l).is_done).length,r=()=>i?Dy(t.id):void Hu(n);return s`<div class="batch-end">
    <p class="aside">Begun ${Py(t.begun_at)}; its weights stay as they were then.</p>
    ${Ql===t.id?Ay(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{Hu(n)}):s`<button type="button" class=${i?"":"strong"} ?disabled=${Hn(n)} @click=${r}>
            This batch is done
          </button>`}
  </div>`}function wO({kept:e,number:t},n){let{id:o}=e;return s`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Py(n)}.</p>
    ${Ql===o?Ay("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{ar(t)}):s`<button type="button" @click=${()=>Dy(o)}>Start this batch anew</button>`}
  </div>`}function Dy(e){Ql=e,Q(),z(L("batch-stays"))}function Ay(e,t,n){let o=()=>{Ql="",Q(),z(L("run-title"))};return s`<p><b>${e}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${t}</button>
    </div>`}var yO=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Py=e=>yO.format(new Date(e));var vO={pour:"Base",pipe:"Topping"},Oy=e=>new Map(e.flatMap(t=>t.rows.map(n=>[n.key,{row:n,vessel:t}])));function My(e,t){let[n,o]=[Oy(e),Oy(t)],i=[...e,...t].some(({batter:p})=>p==="pipe"),r,l=({row:p,vessel:m})=>{let _=!i||m.batter===r;return r=m.batter,(_||!r?"":`${vO[r]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${l(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${l(p)}, now ${p.row.shown}`);return[...d,...c]}var Qp=3,Gp=new Map,Yp="";function kO(e){let{kept:t,weights:n,planned:o,of:i}=e;if(!t||t.finished_at||!n)return;let{complaint:r}=a;if(r&&!um(r))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:H(r)};if(!o){if(!a.plan)return;let p=i>1?`the run has no batch ${e.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let l=My(n.vessels,o.vessels),d=new Set(Ui(n).map(({text:p})=>p)),c=Ui(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return l.length||c.length?{told:l,dangers:c,mark:o.mark}:void 0}function By(e){let t=kO(e),{kept:n}=e;if(!t||!n)return u;if(Gp.get(n.id)===t.mark)return RO(n.id);let o=t.dangers.length>0||t.refusal!==void 0;return s`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${xO(t)}
    </p>
    ${TO(t)}
    ${t.dangers.map(i=>s`<p class="danger"><strong>${ut}</strong> As it is now: ${i}</p>`)}
    ${Yp===n.id?AO(e):SO(e,t)}
  </div>`}function xO({told:e,refusal:t}){if(t!==void 0)return s`<strong>No weights can be given as it is now:</strong> ${t}.`;let n=e.length-Qp;return s`${e.slice(0,Qp).join("; ")}${n>0?` and ${n} more.`:"."}`}var TO=({told:e})=>e.length>Qp?s`<details>
        <summary>All ${e.length} changes</summary>
        <p>${e.join("; ")}.</p>
      </details>`:u;function RO(e){return s`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Gp.delete(e),Q())}>What has changed</button>
  </div>`}function SO(e,{mark:t,refusal:n}){let{id:o}=e.kept;return s`<div class="row">
    <button type="button" class="strong" @click=${()=>{Gp.set(o,t),Q(),z(L("run-title"))}}>Keep weighing</button>
    ${n===void 0?s`<button type="button" @click=${()=>DO(e)}>Start this batch anew</button>`:u}
  </div>`}function DO(e){let{ticks:t,weigh_cup:n,id:o}=e.kept;if(!Object.keys(t).length&&n===void 0)return void ar(e.number);Yp=o,Q(),z(L("keep-weighing"))}function AO(e){let t=Object.keys(e.kept.ticks).length,n=()=>{Yp="",Q(),z(L("run-title"))},o=()=>{n(),ar(e.number)};return s`<p>
      <b>${t===1?"The 1 tick":`All ${t} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var Fy=({text:e})=>s`<p class="danger"><strong>${ut}</strong> ${e}</p>`;function Cy(e){let t=new Set(a.dangers.run.map(({text:o})=>o)),n=Ui(e).filter(({text:o})=>!t.has(o));return n.length?s`<div class="dangers" role="alert">${n.map(Fy)}</div>`:u}var PO=({vessel:e})=>["lye","lye_pot","share"].includes(e),OO=({batter:e},t)=>!e||!t.batter||e===t.batter;function Ly(e,t){if(!PO(t))return u;let n=Ui(e).filter(o=>OO(o,t));return n.length?s`<div class="dangers">${n.map(o=>s`${Fy(o)} ${MO(o)}`)}</div>`:u}function MO({batter:e,topic:t}){return!e||t==="heat"?s`<button type="button" class="to-cause" @click=${FO}>To the cautions</button>`:s`<button type="button" class="to-cause" @click=${()=>BO(e)}>
    To the superfat of the ${e==="pour"?"base":"topping"}
  </button>`}function BO(e){Xe(e),requestAnimationFrame(()=>z(ne(e,"/superfat")))}function FO(){f({view:"watch"}),z(L("watch-title"))}var Zp=(e,t)=>s`<p class="do ${pn(e)?"old":""}">${t}</p>`;function Iy(e,{batch:t,plan:n}){let{below_brim_mm:o,mass_each_g:i}=t.pour,r=o<.05?"Pour to the brim":`Pour to ${O(Ae(a.units,o))} below the brim`;return Zp(e,s`${r}, <b>${O(j(a.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function Wy(e,{batch:t}){let n=t.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Zp(e,s`Whip until the level weigh-cup holds <b>${O(j(a.units,n.net_g))}</b>.`):u}function Ey(e,{batch:t}){let{pipe:n}=t;return n?Zp(e,s`Pipe <b>${R(n.volume_each_ml,0)} ml</b> on each, ${O(j(a.units,n.mass_each_g))} at the
      planned whipped density.`):u}function Ny(e,{shown:t,beside:n}){if(e==="both")return[t,n];let o=e==="us"?"oz":"g";return[yt(n)===o?n:t,""]}function jy(e,t,n){if(t.vessel==="share"&&!e.batch.lye_pot&&n.role==="lye_solution")return LO(e,t,n);let o=CO(e,t,n);return o===void 0?void 0:{place:o}}function CO({batch:e,plan:t,place:n,vessels:o},i,r){switch(i.vessel){case"fats":case"lye":case"batter":return qy(i,r,e,n);case"layers":return WO(r,e.pour.layers??[],`${n}.pour.layers`);case"dust":return Xp(r.name,e.dust,`${n}.dust`);case"lye_pot":return r.role==="water"||r.role==="ice"?`${n}.lye_pot.water_g`:Xp(r.name,e.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let l=o.filter(d=>d.vessel==="melt");return l.length===t.decorations.length?`decorations.${l.indexOf(i)}.make_g`:void 0}case"share":return IO(i,r,e,n)}}function LO({vessels:e},t,n){let o=e.find(r=>r.vessel==="lye"&&r.key===t.key.replace(/\.share$/,".lye"));return o?{working:{of:t.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:r,shown:l})=>({name:r,value:l,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var Hy=({key:e})=>Number(/^pipe\.(\d+)\./.exec(e)?.[1]??1)-1;function IO(e,t,n,o){let i=(n.pipe?.whippings??[]).slice(0,Hy(e)),r=e.batter==="pipe"?i.reduce((l,{count:d})=>l+d,1):0;return t.role==="lye_solution"?`${o}.lye_pot.shares.${r}.lye_g`:t.role==="water"?`${o}.lye_pot.shares.${r}.top_up_g`:qy(e,t,n,o,"lye")}function Xp(e,t,n){let o=t.findIndex(i=>i.name===e);return o<0?void 0:`${n}.${o}.g`}function qy(e,t,n,o,i=e.vessel){let r=Hy(e),[l,d]=e.batter==="pipe"?[n.pipe?.whippings[r],`${o}.pipe.whippings.${r}`]:[n.pour,`${o}.pour`],c=(l?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===t.name||t.role==="ice"&&_==="water"));return c<0?void 0:`${d}.ingredients.${c}.g`}function WO(e,t,n){let o=(t??[]).findIndex(({name:i})=>i===(e.adding??e.name));return o<0||!e.adding?o<0?void 0:`${n}.${o}.g`:Xp(e.name,t[o].colours,`${n}.${o}.colours`)}function em(e,t,n){let o=n.words.filter(({is_order:r})=>r),i=n.rows.every(({key:r})=>qn(e.number,r).is_done);return s`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${Uy(n)}>
    <div class="vessel-head">
      <h3 id=${Uy(n)}>
        ${n.title}${n.times?s` <b>${n.times} times</b>`:u}${n.day_before?s` <b>the day before</b>`:u}${i?s` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:r})=>s`<p class="vessel-order">${r}</p>`)}
    </div>
    ${Ly(t,n)}
    ${Ia(n.rows,({key:r})=>r,r=>EO(e,t,n,r))}
  </section>`}var Uy=({key:e})=>`vessel-${e.replaceAll(".","-")}`;function EO(e,t,n,o){let{is_done:i,is_waiting:r}=qn(e.number,o.key),[l,d]=Ny(a.units,o),c=pn(e),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return s`<div class="weigh ${o.role} ${i?"done":""} ${r?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${M(i)}
        ?disabled=${e.kept?.finished_at!==void 0}
        @change=${_=>NO(e,t,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?s` <small>${m}</small>`:u}${r?s` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?s`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${l}</b>${d?s` <i>${d}</i>`:u}</span>
    </label>
    ${jO(e,t,n,o)}
  </div>`}function NO(e,{mark:t},n,o){if(!pn(e))return ah(e.number,t,n.key,o.checked);o.checked=!o.checked,B("Not ticked: what is struck through is not to be weighed.")}function jO(e,t,n,o){let{planned:i}=e,r=i?.mark===t.mark?i.vessels.find(({key:m})=>m===n.key):void 0,l=i&&r&&jy(i,r,o);if(!l)return u;let d=`weigh.${e.number}.${o.key}`,c=a.open.has(d),p=`sum-${d.replaceAll(/[^\w]/g,"-")}`;return s`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Ue("open",d)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?s`<div class="sum" id=${p}>${"place"in l?Md(l.place):Ra(l.working)}</div>`:u}`}function tm(e,t){let n=e.flatMap(({title:o,words:i})=>i.filter(({is_order:r})=>!r).map(({text:r})=>({title:o,text:r})));return s`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${t} ${n.map(({title:o,text:i})=>s`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function zy(e,t){let{planned:n,whip_today:o}=a;return!t||!n?void 0:(o?.of===n&&o.batch===e&&o.reading===t||HO(e,t),o?.batch===e&&o.reading===t?o:void 0)}var nm=!1;async function HO(e,t){let{planned:n}=a;if(nm||!n)return;nm=!0;let o={of:n,batch:e,reading:t},i={holds:$(n.run,"/pipe/whip/holds")??"",net:t};try{let r=await bs({...n,run:P(n.run,"/pipe/whip_now",i)});f({whip_today:{...o,...qO(r,e)}})}catch(r){if(!(r instanceof y))throw r;f({whip_today:{...o,complaint:H(r.complaint)}})}finally{nm=!1}}function qO(e,t){let n=e.batches.find(({numbers:o})=>o.includes(t));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var im,om,UO=e=>im??(yt(e)==="oz"||!e&&a.units==="us"?"oz":"g");function Jy(e,t){let n=t.batch.pipe?.whippings??[];if(!n.some(l=>l.readings.length))return u;let o=Mo(e.number),i=UO(o),r=e.kept?.finished_at!==void 0;return s`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${xn("weigh_cup")}</div>
    ${Et("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${M(om??o)}
        ?disabled=${r}
        @input=${l=>om=l.target.value}
        @change=${l=>JO(e,t,l.target.value,i)}
      />
      ${ue("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],zO)}
    </div>
    ${KO(e,t,n,o)} ${QO(t,n)}
  </div>`}function zO(e){im=e,Q()}function JO(e,{mark:t},n,o){om=void 0;let i=Je(n)?`${n.trim()} ${o}`:n.trim();if(im=void 0,i===Mo(e.number))return Q();if(pn(e))return B("Not taken: the weights are not those of what is typed."),Q();lh(e.number,t,i),e.kept&&ua(Co(e.number,e.kept.begun_at),i)}function KO(e,t,n,o){if(!o)return u;let i=zy(e.number,o);return i?i.complaint!==void 0?s`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==t.mark?s`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:s`<div class="today" role="status">
    ${n.map((r,l)=>s`<p>${VO(r,i.pieces?.[l]??null)}</p>`)}
  </div>`:s`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function VO({pieces:e,count:t},n){if(n===null)return u;let o=t>1?"Each of these bowls pipes":"This bowl pipes",i=e-n;return s`${o} <b>${V(n,"piece")}</b> now.
    ${i>0?s`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${e} to make.`}`}function QO(e,t){let n=e.plan.cut?"casts":"pieces";return s`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${t.map(o=>s`<table class="readings">
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
            ${o.readings.map(i=>s`<tr class=${i.planned?"planned":""}>
                  <th scope="row">${O(j(a.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${R(i.overrun_percent,0)} %</td>
                  <td>${e.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var gs="pour",Ky=()=>Vp().kept!==void 0;function Vy(e){qs(),oa();let t=Vp(),n=a.bench.version!==void 0||a.bench.failed!==void 0;return s`<section class="weighing" data-part=${gs} aria-labelledby="run-title">
    ${GO(t)} ${ZO(t)}
    ${t.weights&&n?s`${Cy(t.weights)} ${By(t)} ${XO(t,t.weights,e)}`:u}
    ${t.weights&&n&&!rm(t)?Gy(t,t.weights,e):u}
    ${Sy(t)}
  </section>`}function GO(e){let{weights:t}=e;return s`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${t?.plan.run??String(a.run.now.name??"")}</h1>
    ${t?s`<p class="which">${YO(e,t)}</p>`:u}
    <div class="row">
      ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${Ry(e)}
    </div>
  </div>`}function YO(e,{plan:t,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),r=i.filter(({key:d})=>qn(e.number,d).is_done).length,l=e.of>1?`Batch ${e.number} of ${e.of}: `:"";return s`<b>${l}${qt(t,n)}</b>, ${r} of ${i.length} weighed`}function ZO({number:e,weights:t}){let{failed:n,unsent:o,told:i,complaints:r,version:l}=a.bench,d=o!==void 0&&Hn(e);return s`<div class="bench-told" role="status">
    ${i?.batch===e?s`<p class="alarm">${i.words}</p>
            <button type="button" @click=${ch}>I have looked</button>`:u}
    ${d?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?s`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${r.map(c=>s`<p class="alarm">${c}</p>`)}
    ${t||n!==void 0?u:s`<p class="hint">
            ${a.complaint?"No weights before this is corrected.":l===void 0?"Reading ...":""}
          </p>`}
  </div>`}function XO(e,t,n){let{vessels:o}=t,i=m=>o.filter(_=>_.batter===m),r=i(),l=r.filter(m=>m.day_before),d=r.filter(m=>!m.day_before),c=i("pipe").length>0,p=m=>m.map(_=>em(e,t,_));return s`${rM(c,r)}
    <div class="batters ${c?"two":""}">
      ${Gl("ahead","To have ready",p(l))}
      ${Gl("base",c?"Base":"Batter",eM(e,t,i("pour"),l,n))}
      ${c?Gl("topping","Topping",[...p(i("pipe")),oM(e,t),tm(i("pipe"),nM(e,t))]):u}
      ${Gl("after","At the end",p(d))}
    </div>`}var Qy=({vessel:e})=>e==="lye"||e==="lye_pot";function rm(e){let n=(e.weights?.vessels??[]).filter(o=>Qy(o)&&o.batter!=="pipe").flatMap(o=>o.rows);return n.length>0&&n.every(({key:o})=>qn(e.number,o).is_done)}var Gy=(e,{plan:t,batch:n,mark:o},i)=>ky({number:e.number,words:`${e.of>1?`batch ${e.number} of ${e.of}`:"this batch"}, ${qt(t,n)}`,seen:o,since:e.kept?.begun_at,is_struck:pn(e),is_due:rm(e),show:i}),Gl=(e,t,n)=>n.some(o=>o!==u)?s`<div class="part-of ${e}">
        <h2 id="weigh-${e}">${t}</h2>
        ${n}
      </div>`:u;function eM(e,t,n,o,i){let r=({vessel:p})=>p==="layers",l=p=>p.map(m=>em(e,t,m)),d=n.filter(p=>!r(p)),c=d.map(Qy).lastIndexOf(!0);return[...l(d.slice(0,c+1)),rm(e)?Gy(e,t,i):u,...l(d.slice(c+1)),Iy(e,t),...l(n.filter(r)),tm([...o,...n],tM(e,t))]}var Yy=(e,t,n=u)=>s`<p class=${pn(e)?"old":""}>
    <b>Superfat as weighed:</b> ${t.map(o=>et(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,tM=(e,{batch:t})=>Yy(e,[t.pour],no("superfat_as_weighed")),nM=(e,{batch:t})=>Yy(e,t.pipe?.whippings??[]),oM=(e,t)=>s`${Wy(e,t)} ${Jy(e,t)} ${Ey(e,t)}`,iM={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function rM(e,t){let n=[...new Set(t.flatMap(({vessel:i})=>iM[i]??[]))].join(", ").toLowerCase(),o=[["pour",e?"Base":"Batter"],...e?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===gs)||(gs="pour"),s`<div class="narrow">${ue("What is shown",gs,o,sM)}</div>`)}function sM(e){gs=e,Q(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var Zy=()=>s`${Pi(Ky()?"No new weights can be given.":void 0)} ${Vy(()=>{ht("record")})}`;var aM={"set-up":Jp,watch:vy,money:Db,days:Tb,mould:Qb,print:Zb};function Xy(e){let t=s`${Ws().map(o=>sn(o))} ${Is().map(an)}`;if(e==="weigh")return s`${t} ${Zy()}`;if(e==="record")return s`${t} ${Ub(()=>{ht("weigh")})}`;let{plan:n}=a;return s`${t} ${Pi()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(a.run.now.name??"")}</h1>
    ${n?aM[e](n):lM(e)}`}function lM(e){return a.complaint?e==="set-up"?Jp():s`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:s`<p class="hint">Reading the run ...</p>`}var uM=()=>{f({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function tv(){let e=a.new_run;if(!e)return s`<p class="choice"><button type="button" class="strong" @click=${uM}>New run</button></p>`;let{name:t,mould:n,formula:o}=e,i=Qa(e.sell),r=t.trim()&&n&&o&&i,l=()=>{de(async()=>{await fa({name:t.trim(),mould:n,formula:o,sell:i}),f({new_run:void 0})})};return s`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${M(t)}
          @input=${d=>v(e,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${ev(e,"mould","Mould",dM())} ${ev(e,"formula","Base",cM())}
      ${Ga("new-run-sell",e.sell,d=>v(e,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${l}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${r?u:s`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var dM=()=>[...(a.files?.moulds??[]).filter(e=>!e.shipped).map(e=>[e.file,e.name||e.file]),...a.catalogue.map(e=>[e.path,e.name])],cM=()=>(a.files?.formulas??[]).map(e=>[e.file,e.name||e.file]);function ev(e,t,n,o){let i=`new-run-${t}`;return s`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${l=>v(e,{[t]:l.target.value})}>
      <option value="" .selected=${M(e[t]==="")}>choose ...</option>
      ${o.map(([l,d])=>s`<option value=${l} .selected=${M(l===e[t])}>${d}</option>`)}
    </select>
  </div>`}var pM=(e,t)=>(t.changed??"").localeCompare(e.changed??"");function ov(){let e=a.files?.runs??[],t=e.filter(o=>!o.shipped).sort(pM),n=e.filter(o=>o.shipped);return s`${Rt("Runs")} ${tv()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${t.length?Ut(t,nv):s`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Ut(n,nv)}
    </section>
    ${St("run")}`}function nv(e){let{pieces:t,mould:n,due:o,made_on:i,changed:r}=e,l=[t===void 0?"":V(t,"piece"),n??"",o?`due ${oe(o)}`:"",i?`made ${oe(i)}`:r?`changed ${oe(r)}`:""].filter(Boolean);return ln({kind:vo,one:e,facts:l,picture:mM(n),open:()=>Lo(e.file)})}var mM=e=>a.files?.moulds.find(t=>t.name===e)?.file??a.catalogue.find(t=>t.name===e)?.path;function iv(){let e=Kn();return s`${Rt("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${Wa(Cn,"Each file is named by the studio, or by the runs that use its tips.",t=>dr(Cn,t))}
      ${e?m_(e):u}
      ${Ea({label:"A new tip of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(g_(t)):Gs(Cn,Gd(t)),tried:de})}
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
          ${wr().map(({name:t,opening:n,area_mm2:o})=>s`<tr>
                <th scope="row">${t}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":R(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${St("tips")}`}var av=document.getElementById("page");function lv(){let{view:e,fault:t}=a;return s` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${kb()} ${Ag()}
    <main
      id="main"
      tabindex="-1"
      data-view=${e}
      class=${a.is_old&&!it(e)&&e!=="order"?"old-now":""}
    >
      ${t?s`${e==="reading"?s`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${t}</p>`:u}
      ${hM()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var fM={runs:ov,orders:gb,formulas:L$,moulds:I$,fats:T_,tips:iv};function hM(){let{view:e,fault:t}=a;return mn(e)?Xy(e):it(e)?fM[e]():e==="formula"?B$():e==="order"?hb():t?u:s`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}nf(()=>{v$(),_t(lv(),av),$M()});_t(lv(),av);document.addEventListener("keydown",e=>{if(!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||it(a.view)&&!a.mould)return;e.preventDefault();let{undo:t,redo:n}=Ol();(e.shiftKey?n:t)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return rg();Ft()});function gM(){if(!a.run.file)return sm();f({fault:void 0}),Ft(),ce()}function sm(){f({fault:void 0}),P$().catch(e=>{f({fault:_M(e)}),e instanceof y&&e.may_pass&&window.setTimeout(sm,2e3)})}function _M(e){return e instanceof y&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}var rv=new ResizeObserver(([{target:e}])=>uv(e.offsetHeight)),sv=null;function $M(){let e=document.querySelector(".foremost");e!==sv&&(rv.disconnect(),e?rv.observe(e):uv(0),sv=e)}var uv=e=>document.documentElement.style.setProperty("--foremost",`${e}px`);rf();Rg();A$();lm(e=>{Ai(),e&&gM()});sm();
