import{A as bc,B as Pt,C as yc,D as vc,E as kc,F as X,G as he,H as xc,I as Tc,J as nt,K as Qt,L as gi,M as Dt,N as Ea,O as Rc,P as Sc,R as Ac,S as Pc,T as Dc,a as ic,b as rc,c as G,d as v,e as sc,f as ac,g as mi,h as Sr,i as Re,j as ho,k as lc,l as uc,m as fi,n as dc,o as cc,p as hi,q as pc,r as mc,s as Ar,t as fc,u as hc,v as gc,w as _c,x as un,y as $c,z as wc}from"./chunk-JNIUTSVL.js";var Pr=globalThis,Or=Pr.ShadowRoot&&(Pr.ShadyCSS===void 0||Pr.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,Mc=Symbol(),Oc=new WeakMap,Dr=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==Mc)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(Or&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=Oc.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&Oc.set(n,t))}return t}toString(){return this.cssText}},Fc=e=>new Dr(typeof e=="string"?e:e+"",void 0,Mc);var Cc=(e,t)=>{if(Or)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=Pr.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},Ba=Or?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return Fc(n)})(e):e;var{is:iw,defineProperty:rw,getOwnPropertyDescriptor:sw,getOwnPropertyNames:aw,getOwnPropertySymbols:lw,getPrototypeOf:uw}=Object,Mr=globalThis,Lc=Mr.trustedTypes,dw=Lc?Lc.emptyScript:"",cw=Mr.reactiveElementPolyfillSupport,_i=(e,t)=>e,Wa={toAttribute(e,t){switch(t){case Boolean:e=e?dw:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},Bc=(e,t)=>!iw(e,t),Ec={attribute:!0,type:String,converter:Wa,reflect:!1,useDefault:!1,hasChanged:Bc};Symbol.metadata??=Symbol("metadata"),Mr.litPropertyMetadata??=new WeakMap;var Gt=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=Ec){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&rw(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:r}=sw(this.prototype,t)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let d=i?.call(this);r?.call(this,l),this.requestUpdate(t,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??Ec}static _$Ei(){if(this.hasOwnProperty(_i("elementProperties")))return;let t=uw(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(_i("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(_i("properties"))){let n=this.properties,o=[...aw(n),...lw(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(Ba(i))}else t!==void 0&&n.push(Ba(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return Cc(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:Wa).toAttribute(n,o.type);this._$Em=t,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),l=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:Wa;this._$Em=i;let d=l.fromAttribute(n,r.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(t,n,o,i=!1,r){if(t!==void 0){let l=this.constructor;if(i===!1&&(r=this[t]),o??=l.getPropertyOptions(t),!((o.hasChanged??Bc)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(t)&&!this.hasAttribute(l._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:r},l){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,l??n??this[t]),r!==!0||l!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:l}=r,d=this[i];l!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,r,d)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};Gt.elementStyles=[],Gt.shadowRootOptions={mode:"open"},Gt[_i("elementProperties")]=new Map,Gt[_i("finalized")]=new Map,cw?.({ReactiveElement:Gt}),(Mr.reactiveElementVersions??=[]).push("2.1.2");var ja=globalThis,Wc=e=>e,Fr=ja.trustedTypes,Ic=Fr?Fr.createPolicy("lit-html",{createHTML:e=>e}):void 0,Ha="$lit$",Yt=`lit$${Math.random().toFixed(9).slice(2)}$`,qa="?"+Yt,pw=`<${qa}>`,Hn=document,wi=()=>Hn.createComment(""),bi=e=>e===null||typeof e!="object"&&typeof e!="function",Na=Array.isArray,zc=e=>Na(e)||typeof e?.[Symbol.iterator]=="function",Ia=`[ 	
\f\r]`,$i=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,jc=/-->/g,Hc=/>/g,In=RegExp(`>|${Ia}(?:([^\\s"'>=/]+)(${Ia}*=${Ia}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),qc=/'/g,Nc=/"/g,Jc=/^(?:script|style|textarea|title)$/i,Ua=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),s=Ua(1),M=Ua(2),s1=Ua(3),Se=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Uc=new WeakMap,jn=Hn.createTreeWalker(Hn,129);function Vc(e,t){if(!Na(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return Ic!==void 0?Ic.createHTML(t):t}var Kc=(e,t)=>{let n=e.length-1,o=[],i,r=t===2?"<svg>":t===3?"<math>":"",l=$i;for(let d=0;d<n;d++){let c=e[d],p,m,_=-1,$=0;for(;$<c.length&&(l.lastIndex=$,m=l.exec(c),m!==null);)$=l.lastIndex,l===$i?m[1]==="!--"?l=jc:m[1]!==void 0?l=Hc:m[2]!==void 0?(Jc.test(m[2])&&(i=RegExp("</"+m[2],"g")),l=In):m[3]!==void 0&&(l=In):l===In?m[0]===">"?(l=i??$i,_=-1):m[1]===void 0?_=-2:(_=l.lastIndex-m[2].length,p=m[1],l=m[3]===void 0?In:m[3]==='"'?Nc:qc):l===Nc||l===qc?l=In:l===jc||l===Hc?l=$i:(l=In,i=void 0);let y=l===In&&e[d+1].startsWith("/>")?" ":"";r+=l===$i?c+pw:_>=0?(o.push(p),c.slice(0,_)+Ha+c.slice(_)+Yt+y):c+Yt+(_===-2?d:y)}return[Vc(e,r+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},yi=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let r=0,l=0,d=t.length-1,c=this.parts,[p,m]=Kc(t,n);if(this.el=e.createElement(p,o),jn.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=jn.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(Ha)){let $=m[l++],y=i.getAttribute(_).split(Yt),x=/([.?@])?(.*)/.exec($);c.push({type:1,index:r,name:x[2],strings:y,ctor:x[1]==="."?Lr:x[1]==="?"?Er:x[1]==="@"?Br:Nn}),i.removeAttribute(_)}else _.startsWith(Yt)&&(c.push({type:6,index:r}),i.removeAttribute(_));if(Jc.test(i.tagName)){let _=i.textContent.split(Yt),$=_.length-1;if($>0){i.textContent=Fr?Fr.emptyScript:"";for(let y=0;y<$;y++)i.append(_[y],wi()),jn.nextNode(),c.push({type:2,index:++r});i.append(_[$],wi())}}}else if(i.nodeType===8)if(i.data===qa)c.push({type:2,index:r});else{let _=-1;for(;(_=i.data.indexOf(Yt,_+1))!==-1;)c.push({type:7,index:r}),_+=Yt.length-1}r++}}static createElement(t,n){let o=Hn.createElement("template");return o.innerHTML=t,o}};function qn(e,t,n=e,o){if(t===Se)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=bi(t)?void 0:t._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=qn(e,i._$AS(e,t.values),i,o)),t}var Cr=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??Hn).importNode(n,!0);jn.currentNode=i;let r=jn.nextNode(),l=0,d=0,c=o[0];for(;c!==void 0;){if(l===c.index){let p;c.type===2?p=new go(r,r.nextSibling,this,t):c.type===1?p=new c.ctor(r,c.name,c.strings,this,t):c.type===6&&(p=new Wr(r,this,t)),this._$AV.push(p),c=o[++d]}l!==c?.index&&(r=jn.nextNode(),l++)}return jn.currentNode=Hn,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},go=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=qn(this,t,n),bi(t)?t===u||t==null||t===""?(this._$AH!==u&&this._$AR(),this._$AH=u):t!==this._$AH&&t!==Se&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):zc(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==u&&bi(this._$AH)?this._$AA.nextSibling.data=t:this.T(Hn.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=yi.createElement(Vc(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new Cr(i,this),l=r.u(this.options);r.p(n),this.T(l),this._$AH=r}}_$AC(t){let n=Uc.get(t.strings);return n===void 0&&Uc.set(t.strings,n=new yi(t)),n}k(t){Na(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of t)i===n.length?n.push(o=new e(this.O(wi()),this.O(wi()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=Wc(t).nextSibling;Wc(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},Nn=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,r){this.type=1,this._$AH=u,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(t,n=this,o,i){let r=this.strings,l=!1;if(r===void 0)t=qn(this,t,n,0),l=!bi(t)||t!==this._$AH&&t!==Se,l&&(this._$AH=t);else{let d=t,c,p;for(t=r[0],c=0;c<r.length-1;c++)p=qn(this,d[o+c],n,c),p===Se&&(p=this._$AH[c]),l||=!bi(p)||p!==this._$AH[c],p===u?t=u:t!==u&&(t+=(p??"")+r[c+1]),this._$AH[c]=p}l&&!i&&this.j(t)}j(t){t===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},Lr=class extends Nn{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===u?void 0:t}},Er=class extends Nn{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==u)}},Br=class extends Nn{constructor(t,n,o,i,r){super(t,n,o,i,r),this.type=5}_$AI(t,n=this){if((t=qn(this,t,n,0)??u)===Se)return;let o=this._$AH,i=t===u&&o!==u||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,r=t!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},Wr=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){qn(this,t)}},Qc={M:Ha,P:Yt,A:qa,C:1,L:Kc,R:Cr,D:zc,V:qn,I:go,H:Nn,N:Er,U:Br,B:Lr,F:Wr},mw=ja.litHtmlPolyfillSupport;mw?.(yi,go),(ja.litHtmlVersions??=[]).push("3.3.3");var ot=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new go(t.insertBefore(wi(),r),r,void 0,n??{})}return i._$AI(e),i};var za=globalThis,_o=class extends Gt{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=ot(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Se}};_o._$litElement$=!0,_o.finalized=!0,za.litElementHydrateSupport?.({LitElement:_o});var fw=za.litElementPolyfillSupport;fw?.({LitElement:_o});(za.litElementVersions??=[]).push("4.2.2");var Gc=()=>{},Ja=!1;function Yc(e){Gc=e}function N(){Ja||(Ja=!0,queueMicrotask(()=>{Ja=!1,Gc()}))}function Zc(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}var J=e=>e.replaceAll("~","~0").replaceAll("/","~1");function w(e,t){let n=e;for(let o of Zc(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function A(e,t,n){return Va(e,Zc(t),n)}function Va(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let d=[...e],c=Va(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let r={...e??{}},l=Va(r[o],i,n);return l===void 0?delete r[o]:r[o]=l,r}var Xc=e=>ac("GET",`/api/bench?run=${encodeURIComponent(e)}`),ep=e=>mi("/api/bench/tick",e),tp=e=>mi("/api/bench/weigh_cup",e),np=(e,t)=>mi("/api/bench/anew",{run:e,batch:t}),op=(e,t)=>mi("/api/bench/finish",{run:e,batch:t});var ne=(e,t)=>({name:e,label:t,unit:"mm"}),dn=ne("height","Floor to brim"),Ir={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},Ka={block:{words:"Box, loaf or slab",measures:[ne("length","Longer side at the brim"),ne("width","Shorter side"),dn,Ir,{...ne("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[ne("floor_diameter","Across the floor"),ne("brim_diameter","Across the brim"),dn]},fluted_cup:{words:"Fluted cup",measures:[ne("floor_diameter","Across the floor"),ne("brim_diameter","Across the brim"),dn,{name:"flutes",label:"Flutes",unit:"",count:!0},ne("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},ne("across_flats","Across the flats"),dn,Ir]},dome:{words:"Bowl",measures:[ne("diameter","Across the brim"),dn]},half_ball:{words:"Half ball",measures:[ne("diameter","Across the brim")]},ball:{words:"Ball",measures:[ne("diameter","Across")]},half_ring:{words:"Half ring",measures:[ne("centre_diameter","Ring, middle to middle of the tube"),ne("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[ne("outer_floor_diameter","Cup, across the floor"),ne("outer_brim_diameter","Cup, across the brim"),ne("post_floor_diameter","Post, at its foot"),ne("post_brim_diameter","Post, at its top"),dn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[ne("height","Height"),ne("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[dn,Ir],points:{columns:[ne("x","From the left"),ne("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[ne("side","Straight edge, tip to round"),dn,Ir]}},ip=Object.fromEntries(Object.entries(Ka).map(([e,{words:t}])=>[e,t])),$o=e=>Ka[e]?.measures??[],cn=e=>Ka[e]?.points;var Qa=(e,t)=>String(w(e,t)??"").trim(),vi=e=>Qa(e,"/shape/kind"),ht=(e,t)=>w(e,`/${t}`)!==void 0,Ga=e=>["body","skin"].includes(Qa(e,"/mesh/role"));function Je(e,t){let n=w(e,t);return Array.isArray(n)?n:[]}function rp(e,t){return(cn(vi(e))?.columns??[]).map(({name:o})=>String(w(t,`/${o}`)??"").trim())}function ki(e){return Je(e,"/shape/points").flatMap((t,n)=>rp(e,t).every(Boolean)?[n]:[])}function jr(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return Je(e,"/shape/points").flatMap((n,o)=>t(rp(e,n))?[o]:[])}var Ya=e=>Je(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function sp(e){let t=e,n=(o,i)=>{if(!Array.isArray(w(t,o)))return;let r=i.map(l=>w(e,`${o}/${l}`));t=A(t,o,r)};return cn(vi(e))&&n("/shape/points",ki(e)),n("/water/weighings",Ya(e)),t}function Hr(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let r=n==="/shape/points"?ki(e):Ya(e);return`${n}/${r[Number(o)]??o}${i}`}function xi(e){let t=[],n=i=>Qa(e,i)!=="",o=(i,r)=>{i||t.push(r)};if(ht(e,"shape")){let i=vi(e);o(i!=="","the shape");for(let{name:l,label:d,optional:c}of $o(i))o(c||n(`/shape/${l}`),d.toLowerCase());let r=cn(i);r&&o(ki(e).length>=r.least,`${r.least} points at least`)}if(ht(e,"water")){o(n("/water/temperature"),"the water's temperature"),o(w(e,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o(w(e,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(Ya(e).length>0,"a weighing of water")}return!Ga(e)&&!ht(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var We=e=>e.slice(0,e.lastIndexOf("/")+1),Ve=e=>e.slice(e.lastIndexOf("/")+1),Un=(e,t)=>{let n=We(e);return n?hw(n+t):t};function hw(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function gt(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function wo(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let r=i===1?e:`${n}_${i}${o}`;if(!t.some(l=>l.file===r))return r}}var gw=["mould","formula","run","file","own_fats","own_tips"];function Za(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?Za(o,i):gw.includes(n)?[i]:[]})}function Xa(e,t){let[n,o]=[e,t];for(let i of["/$schema","/id",...Za(e)])[n,o]=[A(n,i,void 0),A(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function el(e,t){let n=["/id",...Za(e)].filter(o=>w(e,o)!==w(t,o));return o=>n.reduce((i,r)=>w(i,r)===w(e,r)?A(i,r,w(t,r)):i,o)}var zn={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:e,file:t,now:n})=>e?Ve(t):gt(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},Jn={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:e})=>gt(String(e.for??"order"),".order.json"),written:e=>e,is_begun:()=>!0},bo={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:e,file:t,now:n})=>e?Ve(t):gt(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},tl=(e,t,n)=>({name:e,list:t,called:n,has_id:!1,new_name:({file:o})=>Ve(o),written:o=>o,is_begun:()=>!0}),Ti=tl("studio","studios","name"),Ot=tl("fats","fats"),pn=tl("tips","tips","title"),Ie={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:e})=>gt(String(e.name),".json"),written:e=>({...sp(e),name:String(e.name??"").trim()}),is_begun:e=>ht(e,"shape")||ht(e,"mesh")};var ap={},lp={kind:zn,id:"",file:"",version:null,shipped:!1,now:ap,saved:ap,unanswered:[]},Ae={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:lp,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(ww()),folded:new Set,units:_w(),announcement:""},a=Ae;function _w(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}var nl=e=>`numbers ${String(e.now.id??e.file)}`,$w=e=>({numbers:localStorage.getItem(nl(e))??void 0,figure:""});function Ri(e){f({quote_wish:{...Ae.quote_wish,...e}});let{numbers:t}=Ae.quote_wish;t?.trim()?localStorage.setItem(nl(Ae.run),t):localStorage.removeItem(nl(Ae.run))}var up="set-up ";function ww(){try{let e=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(e)?e.filter(t=>typeof t=="string"):[]}catch{return[]}}function bw(){let e=[...Ae.open].filter(t=>t.startsWith(up));localStorage.setItem("parts",JSON.stringify(e))}function f(e){Object.assign(Ae,e),N()}var W=e=>f({announcement:e});function b(e,t){Object.assign(e,t),N()}function Mt(e,t){let{[e]:n,...o}=Ae.formulas;f({formulas:t?{...o,[e]:t}:o})}function Ee(e,t){let n=new Set(Ae[e]);n.delete(t)||n.add(t),f({[e]:n}),t.startsWith(up)&&bw()}function yo(e=lp){f({run:e,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,quote_wish:$w(e),quoted:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function se(e){Ae.open.has(e)||f({open:new Set(Ae.open).add(e)})}function Vn({list:e,called:t},n,o={}){if(!Ae.files)return;let i=Ae.files[e].findIndex(d=>d.file===n),r={...i<0?{}:Ae.files[e][i],file:n,name:String((t&&o[t])??""),note:String(o.note??""),shipped:!1},l=Ae.files[e].filter(d=>d.file!==n);l.splice(i<0?l.length:i,0,r),f({files:{...Ae.files,[e]:l}})}var yw=1e4,ol=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",ol);var qr=[],vo=()=>`bench ${a.files?.folder??""}`;function Ke(){try{return[...JSON.parse(localStorage.getItem(vo())??"[]"),...qr]}catch{return qr}}function il(e){try{e.length?localStorage.setItem(vo(),JSON.stringify(e)):localStorage.removeItem(vo()),qr=[]}catch{qr=e}}var vw=(e,t)=>e.run===t.run&&e.batch===t.batch&&e.key===t.key;function dp(e){let t={...e,id:crypto.randomUUID(),tab:ol,at:Date.now()};il([...Ke().filter(n=>!vw(n,t)),t])}var Nr=e=>il(Ke().filter(t=>!e(t))),cp=(e,t)=>il(Ke().map(n=>n.run===e?{...n,run:t}:n)),rl=()=>Ke().find(e=>e.tab===ol||Date.now()-e.at>yw);var de=["pour","pipe","apart"],_e=["studio","own_fats","own_tips"],Ur=e=>_e.includes(e);var sl=e=>[...new Set(e.flatMap(t=>a.formulas[t]??[]))],al=()=>_e.flatMap(e=>a.beside[e]??[]),pp=e=>e.filter(t=>t.theirs),Zt=e=>pp([...sl(e==="apart"?["apart"]:["pour","pipe"]),...al()])[0],zr=()=>[a.run,...sl(de),...al()].filter(e=>e.is_taken&&!e.theirs),Jr=()=>pp([a.run,...sl(de),...al()]);var Si=()=>a.formulas.apart?"apart":"run",mp=e=>f({dangers:{...a.dangers,[Si()]:e}});function ll(e){let t=e.cautions.filter(n=>n.severity==="danger");mp(t.map(({text:n,topic:o,batter:i,batch_pieces:r})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:r})))}function fp(e){e.lye_heavy&&mp([{text:G(e),is_of_heat:!1}])}var hp={};function _t(e,t){(hp[e]??=[]).push(t)}function $e(e,t){for(let n of hp[e]??[])n(t)}async function it({kind:e,name:t,text:n,from:o,goes_on:i,about_to:r,is_own:l}){for(;;){let{runs:d=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:$=[],tips:y=[]}=a.files??{},x=wo(t,[...d,...c,...p,...m,..._,...$,...y]);r?.(x);let z=await kw({file:x,version:null,text:n,from:o,goes_on:i});if(Vn(e,x,he(z.there.text)??{}),z.is_new||l?.(z.there))return z.there}}async function kw(e){try{return{is_new:!0,there:await ho(e)}}catch(t){if(!(t instanceof v)||t.status!==409)throw t;return{is_new:!1,there:t.answer}}}var Vr=e=>`unsaved ${e.name} ${a.files?.folder??""} `;function Kn({kind:e,id:t,file:n,version:o,shipped:i,now:r},l){if(e.is_begun(r))try{let d={id:t,file:n,version:o,shipped:i,text:X(r),copy:l};localStorage.setItem(Vr(e)+t,JSON.stringify(d))}catch{}}function ul(e,t){try{return JSON.parse(localStorage.getItem(Vr(e)+t)??"null")??void 0}catch{return}}var mn=(e,t)=>localStorage.removeItem(Vr(e)+t),gp=()=>Object.keys(localStorage).some(e=>e.startsWith("unsaved "));function Kr(e){let t=Vr(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>ul(e,o)??[])}var xw=300,U=e=>e.now!==e.saved;function Qn(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function Pe(e,t,n=t){let o=await Pc(t),i=Tw(e,JSON.parse(o.text),o.shipped),r=ul(e,n),l=r?.copy&&o.shipped?await Rw(e,r,i):void 0;if(l)return mn(e,n),Pe(e,l);let{version:d,shipped:c=!1}=o,p={kind:e,id:n,file:t,version:d,shipped:c,now:i,saved:i,unanswered:[]};return r&&Sw(p,r,o),p}var Tw=(e,t,n=!1)=>e.has_id&&!n&&t.id===void 0?{...t,id:crypto.randomUUID()}:t;async function Rw(e,t,n){if(!a.files?.[e.list].some(r=>r.file===t.copy))return;let o=he(t.text),i=he((await Re(t.copy)).text);if(!(!o||!i||X(o)===X(n)))return Xa(e.written(o),i)?t.copy:void 0}function Sw(e,t,n){let o=he(t.text);if(!o||X(o)===X(e.now))return mn(e.kind,e.id);b(e,{now:o}),!(t.version===n.version||n.shipped)&&(b(e,{version:t.version}),xp(e,n))}function be(e,t){let n=e.now;b(e,{now:t,failed:void 0,...e.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),Kn(e),$e("edited",{file:e,before:n})}var _p=new WeakMap,dl=async e=>_p.get(e),Ft=e=>$p(e,()=>Aw(e)),ko=e=>$p(e,()=>e.shipped?wp(e,bp):Promise.resolve());function $p(e,t){let n=dl(e).then(t);return _p.set(e,n.catch(()=>{})),n}async function Aw(e){!U(e)||e.theirs||await wp(e,e.shipped||!e.file?bp:yp)}async function wp(e,t){b(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof v&&b(e,{failed:G(n.complaint)}),n}}async function bp(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,r=t.written(o),l=await it({kind:t,name:t.new_name(e),text:X(r),from:i,goes_on:i!==void 0&&t.name==="run",about_to:m=>Kn(e,m),is_own:({text:m})=>i!==void 0&&Xa(r,he(m)??{})}),d=JSON.parse(l.text),c=el(r,d),p=e.now===o?d:c(e.now);mn(t,n),b(e,{id:l.file,file:l.file,version:l.version,shipped:!1,now:p,saved:d}),U(e)&&Kn(e),i!==void 0&&$e("copied",{file:e,from:i,renamed:c})}async function yp(e){let{version:t,now:n}=e,o=X(e.kind.written(n));b(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{Qr(e,n,(await ho({file:e.file,version:t,text:o})).version)}catch(i){if(!(i instanceof v)||i.status!==409)throw i;vp(e,i.answer),U(e)&&!e.theirs&&await yp(e)}}function Qr(e,t,n){b(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),U(e)?Kn(e):mn(e.kind,e.id),Vn(e.kind,e.file,t)}function vp(e,{version:t,text:n}){if(n===X(e.kind.written(e.now)))return Qr(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);if(b(e,{unanswered:[]}),o)return b(e,{version:t,saved:void 0,theirs:void 0});let i=U(e)||e.theirs?void 0:he(n);i?Pw(e,i,t):xp(e,{version:t,text:n})}function Pw(e,t,n){$e("giving_way",{file:e}),b(e,{set_aside:e.now,is_taken:!0,now:t}),Qr(e,t,n),W(`${e.file} was changed outside this page, and stands here as it is now.`),$e("gave_way",{file:e})}var kp=e=>b(e,{set_aside:void 0,is_taken:void 0});function xp(e,{version:t,text:n}){b(e,{theirs:{version:t,text:n}}),Kn(e),W(n===null?`${e.file} was deleted outside this page. Save it again, or leave it deleted?`:`${e.file} was changed outside this page. Which version do you want to keep?`),$e("conflict",{file:e})}function Tp(e){if(!e.theirs)return;let t=he(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return b(e,{failed:n})}$e("giving_way",{file:e}),b(e,{set_aside:e.now,now:t}),Qr(e,t,e.theirs.version),$e("gave_way",{file:e})}function Rp(e){e.theirs&&(b(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),Kn(e),$e("unwritten",{file:e}))}var Gn=({theirs:e})=>e?.text===null;function Sp(e){Gn(e)&&(mn(e.kind,e.id),b(e,{saved:e.now,theirs:void 0,failed:void 0}),W(`${e.file} stays deleted.`),$e("left_deleted",{file:e}))}function Ap(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e,o=e.is_taken;be(e,t),b(e,{set_aside:o?void 0:n})}var Pp=e=>(e.theirs??e).version;function Dp(e,t){b(e,{id:t,file:t}),$e("renamed",{file:e,renamed:n=>n})}async function Op(e){let{version:t,text:n}=await Re(e.file),o=he(n);if(!o||e.theirs||t===e.version)return;let i=el(e.now,o);if(U(e))return b(e,{version:t,now:i(e.now),saved:o});b(e,{version:t,now:o,saved:o}),$e("renamed",{file:e,renamed:i})}var Mp=e=>e.shipped||!e.file?[]:[[e.file,Pp(e)]];async function cl(e,t,n,o){let i=e.file,r=()=>Pp(e)===t&&e.file===i;if(!r()||(await dl(e),!r()))return!1;o(),await pl();let l=await Dw(i,n);return await dl(e),r()&&(vp(e,l),U(e)&&!e.theirs&&$e("unwritten",{file:e})),!0}async function Dw(e,t){let n=await t(e);return n===null?{version:n,text:null}:Re(e)}var pl=()=>new Promise(e=>setTimeout(e,xw));var Ow=400,Mw=2e3,ml=new WeakMap;function Cp(e,t){clearTimeout(ml.get(e)),ml.set(e,window.setTimeout(()=>{Ct(e)},t))}var fn=(e=a.run)=>Cp(e,Ow),Fw=e=>e===a.run||e===a.order?.open;async function Ct(e=a.run){clearTimeout(ml.get(e));try{await Ft(e),U(e)&&!e.theirs&&Fw(e)&&fn(e)}catch(t){if(!(t instanceof v))throw t;t.may_pass&&Cp(e,Mw)}}async function Yn(){for(let e of[a.run,a.order?.open])e?.file&&U(e)&&await Ct(e)}var Fp=Promise.resolve();function hn(){let e=Fp.then(Cw);return Fp=e.catch(()=>{}),e}async function Cw(){for(let e of de){let t=a.formulas[e];!t||!U(t)||t.theirs||(t.shipped&&e!=="apart"&&await ko(a.run),await Ft(t))}for(let e of _e){let t=a.beside[e];t&&U(t)&&!t.theirs&&await Ft(t)}}var Xt=e=>Un(a.run.file,e);function je(e,t){let n=Xt(e);return t?.some(o=>o.file===n)?n:e}function Lp(e){let t=a.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=je(String(n?.mould??""),a.files?.moulds);return{file:wo("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(t.name??""),sell:t.sell??"",...t.spoilage===void 0?{}:{spoilage:t.spoilage},pour:{mould:r,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},...Lw(t)}}}function Lw(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}var xo=({lines:e})=>Array.isArray(e)?e:[];function To(e){let t=xo(e);return t.length>0&&t.every(({run:n,pieces:o})=>n&&typeof o=="number")}var $t=new Map,Ai=new Set,Ew={changed:{},unreadable:[]},Ro=()=>new Set([...de.flatMap(e=>a.formulas[e]??[]),..._e.flatMap(e=>a.beside[e]??[])]);async function Gr(){let e=Bw(),t=new Set([...Ro()].map(({file:o})=>o));for(let o of $t.keys())!e.has(o)&&!t.has(o)&&$t.delete(o);for(let o of Ai)e.has(o)||Ai.delete(o);let n=[...e].filter(o=>!$t.has(o));for(let[o,i]of await Ep(n))$t.has(o)||$t.set(o,i)}async function Ep(e){let t=e.filter(o=>!Ai.has(o)),n=t.length?await hi(new Map(t.map(o=>[o,null]))):Ew;return gl(n.unreadable),new Map(e.map(o=>[o,n.changed[o]??null]))}var fl=async e=>(await Ep([e])).get(e)??null,hl=()=>new Map([...$t].filter(([e])=>!Ai.has(e)));function Bw(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add(Xt(o)),o.includes("..")||e.add(o))},n=a.run.now;e.add(Xt("studio.json")),t(w(n,"/pour/mould")),t(w(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])t(w(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||t(w(n,`/${o}/formula`));for(let{file:o,now:i}of Ro()){let r=i.own_fats;typeof r=="string"&&r&&e.add(We(o)+r).add(r)}t(w(a.beside.studio?.now,"/own_tips"));for(let o of Ww())e.add(o);for(let o of _e)e.delete(a.beside[o]?.file??"");return e}function Ww(){let{open:e}=a.order??{},t=new Set(e?xo(e.now).map(({run:p})=>Un(e.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:r=[],tips:l=[]}=a.files??{},d=[...n,...o,...i,...r,...l].filter(({shipped:p})=>!p),c=-1;for(;c!==t.size;){c=t.size;for(let{file:p,used_by:m=[]}of d)m.some(_=>t.has(_))&&t.add(p)}return e&&t.size&&t.add(Un(e.file,"studio.json")),t.delete(a.run.file),t}function Bp(e,{changed:t}){let n=Object.keys(t).filter(o=>$t.has(o)&&$t.get(o)===e.get(o));for(let o of n)$t.set(o,t[o]);return n}var gl=e=>e.forEach(t=>Ai.add(t));function Wp(){return[...Ro()].flatMap(({file:e,version:t})=>{let n=$t.get(e)??t;return $t.delete(e),n===t?[]:[e]})}var Ip=0,Pi=()=>Ip;function _l(e){++Ip,f({is_old:!0,changed_beside:e})}var Iw=1e3,jw=450,Yr=!1,Zn=!1,$l=0;function re(){f({is_old:!0}),Yr?Zn=!0:So()}async function So(){if(Yr){Zn=!0;return}Yr=!0,jp(!1);try{do Zn=!1,await Hw();while(Zn)}finally{Yr=!1,jp(!0),N()}}async function qp(){let{run:e}=a,t={file:e.file,run:e.now},n=await Dc(t)?.catch(()=>{});!n||e!==a.run||a.plan||gp()||(f({plan:n,planned:t}),ll(n))}var jp=e=>{document.documentElement.dataset.settled=String(e)};function Hp(){let{run:e}=a,{apart:t}=a.formulas,{file:n,now:o}=e;return()=>{let i=e===a.run&&(n===e.file||o===e.now);return t===a.formulas.apart&&(t!==void 0||i)}}async function Hw(){let e=Hp();try{await hn(),await Gr(),e=Hp();let{apart:t}=a.formulas;if(Zt(t?"apart":"run"))return f({is_old:!0});let n=Pi(),o=t?Lp(t.file):{file:a.run.file,run:a.run.now},i=await Ar(o);if(window.clearTimeout($l),!e())return void(Zn=!0);f({plan:i,planned:o,complaint:void 0}),ll(i);let r=n===Pi();f({is_old:Zn||!r}),r&&f({changed_beside:void 0})}catch(t){if(!(t instanceof v))throw t;if(!e())return void(Zn=!0);qw(t)}}function qw(e){f({is_old:!0}),window.clearTimeout($l);let t=()=>{f({complaint:e.complaint}),fp(e.complaint)};a.complaint||!a.plan?t():$l=window.setTimeout(t,jw),e.may_pass&&window.setTimeout(re,Iw)}var Np=2e3,Qe=e=>f({bench:{...a.bench,...e}}),Nw=()=>Qe({acts:Ke()});addEventListener("storage",({key:e})=>{e===vo()&&Nw()});function Zr(){let{file:e}=a.run;!e||a.bench.run===e||(f({bench:{run:e,batches:[],complaints:[],acts:Ke()}}),Xn().then(vl))}function Up(e){let{file:t}=a.run;cp(e,t),a.bench.run===e&&Qe({run:t,acts:Ke()}),a.bench.run===t&&Xn()}function Xr(){let{run:e,version:t}=a.bench;return t===void 0||e!==a.run.file?void 0:{run:e,version:t}}var Di=0;async function Xn(){let{run:e}=a.bench,t=Di;try{let n=await Xc(e);if(e!==a.bench.run)return;if(t!==Di)return await Xn();zp(n)}catch(n){if(!(n instanceof v))throw n;if(e!==a.bench.run)return;Qe({failed:G(n.complaint)}),Jp(n)&&setTimeout(()=>a.bench.failed!==void 0&&void Xn(),Np)}}var zp=({batches:e,version:t,complaints:n=[]})=>Qe({batches:e,version:t,complaints:n.map(({line:o})=>o),failed:void 0}),Jp=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t),Ao=e=>a.bench.batches.find(t=>t.batch===e),bl=e=>a.bench.acts.filter(({run:t,batch:n})=>t===a.bench.run&&n===e),Po=e=>bl(e).length>0;function eo(e,t){let n=bl(e).find(i=>i.key===t),o=Ao(e)?.ticks[t]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function yl(e){let t=bl(e).find(n=>n.reading!==void 0);return(t?t.reading:Ao(e)?.weigh_cup)??""}function Vp(e,t,n){let{run:o}=a.bench,r=Ao(e)!==void 0||!a.planned?void 0:X(a.planned.run);dp({run:o,batch:e,seen:t,text:r,...n}),Qe({acts:Ke(),chosen:e,told:void 0}),vl()}var Kp=(e,t,n,o)=>Vp(e,t,{key:n,done:o}),Qp=(e,t,n)=>Vp(e,t,{reading:n||null}),wl=!1;async function vl(){if(!wl){wl=!0;try{await navigator.locks.request(vo(),Uw)}finally{wl=!1}Ke().length&&setTimeout(()=>{vl()},Np)}}async function Uw(){for(let e=rl();e;e=rl())if(!await zw(e))return}async function zw(e){let{id:t}=e;try{let n=await Jw(e);return++Di,Nr(o=>o.id===t),Vw(n,e.run),!0}catch(n){if(!(n instanceof v))throw n;return Jp(n)?(Qe({unsent:G(n.complaint)}),!1):(await Kw(e,n),!0)}}function Jw({run:e,text:t,batch:n,seen:o,key:i,done:r,reading:l}){let d={run:e,text:t,batch:n,seen:o};return i!==void 0?ep({...d,key:i,done:r??!1}):tp({...d,reading:l??null})}function Vw(e,t){let n=Ke();if(t!==a.bench.run)return Qe({acts:n,unsent:void 0});let i=[...a.bench.batches.filter(r=>r.batch!==e.batch),e].sort((r,l)=>r.batch-l.batch);Qe({acts:n,batches:i,unsent:void 0})}async function Kw(e,{complaint:t}){++Di,Nr(o=>o.run===e.run&&o.batch===e.batch);let n=`Not taken: ${G(t)}.`;Qe({acts:Ke(),unsent:void 0,told:{batch:e.batch,words:n}}),W(n),re(),await Xn()}async function Oi(e){let{run:t}=a.bench;await Gp(e,async()=>{let n=await np(t,e);return Nr(o=>o.run===t&&o.batch===e),n})}var kl=e=>Gp(e,()=>op(a.bench.run,e));async function Gp(e,t){let{run:n}=a.bench;try{let o=await t();if(++Di,n!==a.bench.run)return;zp(o),Qe({acts:Ke(),told:void 0,chosen:e})}catch(o){if(!(o instanceof v))throw o;Qe({told:{batch:e,words:G(o.complaint)}})}}var Yp=e=>Qe({chosen:e,told:void 0}),Zp=()=>Qe({told:void 0});var Qw=300,Gw=1200,es="",Xp=0;function Mi(){let e={run:{file:a.run,now:a.run.now}};for(let t of de){let n=a.formulas[t];n&&(e[t]={file:n,now:n.now})}for(let t of _e){let n=a.beside[t];n&&(e[t]={file:n,now:n.now})}return e}function to(e=""){let t=performance.now();e&&e===es&&t-Xp<=Gw&&a.past.length||xl(Mi()),f({future:[]}),es=e,Xp=t}var xl=e=>f({past:[...a.past,e].slice(-Qw)});function Do(e){xl(em(Mi(),e,()=>e.saved??{}))}function em(e,t,n){let o=Object.entries(e).map(([i,r])=>r.file===t?[i,{file:t,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function Tl(e,t){let n=o=>o.map(i=>em(i,e,t));f({past:n(a.past),future:n(a.future)})}function Fi(){let e=a.past.at(-1);e&&(f({past:a.past.slice(0,-1),future:[...a.future,Mi()]}),tm(e,"Undone"))}function Rl(){let e=a.future.at(-1);e&&(f({past:[...a.past,Mi()],future:a.future.slice(0,-1)}),tm(e,"Redone"))}function tm(e,t){es="",f({typed:void 0});for(let n of[..._e,...de,"run"])Yw(n,e);W(t)}function Yw(e,t){let n=t[e];if(Ur(e))return Zw(e,n);let o=e==="run"?n?.file===a.run:a.formulas[e]!==void 0;!n||!o||(e!=="run"&&Mt(e,n.file),n.file.now!==n.now&&be(n.file,n.now))}function Zw(e,t){t&&t.file===a.beside[e]&&t.file.now!==t.now&&be(t.file,t.now)}var Oo=e=>e===a.run||de.some(t=>a.formulas[t]===e)||_e.some(t=>a.beside[t]===e);_t("giving_way",({file:e})=>{Oo(e)&&(es="",xl(Mi()),f({typed:void 0}))});for(let e of["copied","renamed"])_t(e,({file:t,renamed:n})=>Tl(t,n));var Xw=1200,Sl="",nm=0;function Mo(e,t=""){let n=performance.now(),o=t&&t===Sl&&n-nm<=Xw&&e.past.length;b(e,{past:o?e.past:[...e.past,e.open.now],future:[]}),[Sl,nm]=[t,n]}function ts(e){let t=e.past.at(-1);t&&(b(e,{past:e.past.slice(0,-1),future:[...e.future,e.open.now]}),om(e,t,"Undone"))}function ns(e){let t=e.future.at(-1);t&&(b(e,{past:[...e.past,e.open.now],future:e.future.slice(0,-1)}),om(e,t,"Redone"))}function om({open:e},t,n){Sl="",f({typed:void 0}),be(e,t),W(n)}function Fo(e){return e==="run"?a.run:e==="order"?a.order?.open:Ur(e)?a.beside[e]:a.formulas[e]}var eb=e=>Fo(e)?.now,g=(e,t)=>w(eb(e),t),D=(e,t)=>String(g(e,t)??"");function ce(e,t){let n=g(e,t);return Array.isArray(n)?n:[]}function ae(e,t,n){let o=g(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function im(e,t){e==="order"&&a.order?Mo(a.order,t):to(t===void 0?"":`${e} ${t}`)}function V(e,t,n){let o=Fo(e);!o||w(o.now,t)===n||(im(e,t),be(o,A(o.now,t,n)))}function rm(e,t){let n=Fo(e);n&&(im(e),f({typed:void 0}),be(n,t(n.now)))}function gn(e){to(),f({typed:void 0});for(let[t,n]of e){let o=Fo(t);o&&be(o,n(o.now))}}var Al=(e,t)=>{let{[e]:n,...o}=a.beside;f({beside:t?{...o,[e]:t}:o})};function os(e){for(let t of _e)a.beside[t]===e&&Al(t,void 0)}async function tb(e,t){try{let n=await Pe(e,t);return U(n)&&Do(n),n}catch(n){if(!(n instanceof v||n instanceof SyntaxError))throw n;return}}async function _n(e,t,n){let o=a.beside[e];if(o?.file===n)return o;let i=await tb(t,n);return Al(e,i),i&&U(i)&&$e("unwritten",{file:i}),i?.theirs&&$e("conflict",{file:i}),i}var am=()=>Xt("studio.json");async function Co(e=!1){let t=am(),n=(a.files?.studios??[]).some(o=>o.file===t);a.beside.studio?.file!==t&&(n||e?await _n("studio",Ti,t):Al("studio",void 0))}async function lm(){a.run.shipped&&await ko(a.run);let e=am();await _n("studio",Ti,e)||(await nb(e),await _n("studio",Ti,e))}async function nb(e){try{await ho({file:e,version:null,text:X({schema:"brimwright.studio/1"})})}catch(t){if(!(t instanceof v)||t.status!==409)throw t}Vn(Ti,e)}var sm=(e,t)=>We(e.file)+t;async function ob(e){try{return he((await Re(e)).text)!==void 0}catch(t){if(!(t instanceof v))throw t;return!1}}async function is(e){let t=a.formulas[e];if(!t)return;t.shipped&&await ko(t);let n=String(w(t.now,"/own_fats")??"");if(n){let l=sm(t,n);return _n("own_fats",Ot,await ob(l)?l:n)}let o=(a.files?.fats??[]).find(l=>!l.shipped&&We(l.file)===We(t.file)),i={schema:"brimwright.fats/1",fats:[]},r=o?.file??await Dl(Ot,sm(t,"my.fats.json"),i);return V(e,"/own_fats",Ve(r)),_n("own_fats",Ot,r)}async function Pl(){a.run.shipped&&await ko(a.run);let e="/pipe/beads/own_tips",n=String(w(a.run.now,e)??"")||String(w(a.beside.studio?.now,"/own_tips")??"");if(n)return _n("own_tips",pn,Xt(n));let o=We(a.run.file),i=(a.files?.tips??[]).find(d=>!d.shipped&&We(d.file)===o),r={schema:"brimwright.tips/2",tips:[]},l=i?.file??await Dl(pn,`${o}my.tips.json`,r);return a.beside.studio?V("studio","/own_tips",Ve(l)):V("run",e,Ve(l)),_n("own_tips",pn,l)}async function Ci(e,t){await _n(e===Ot?"own_fats":"own_tips",e,t)&&f({held_open:t})}function $n(){let{view:e,held_open:t,beside:n}=a,o=e==="fats"?n.own_fats:e==="tips"?n.own_tips:void 0;return o&&o.file===t?o:void 0}async function rs(e,t){let n=e===Ot;await Ci(e,await Dl(e,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[t]}:{schema:"brimwright.tips/2",tips:[t]}))}async function Dl(e,t,n){let{file:o}=await it({kind:e,name:t,text:X(n)});return Vn(e,o),o}function um(e,t){let n=(i,r)=>String(w(i,r)??"").endsWith(Ve(t));for(let i of de)e===a.beside.own_fats&&n(a.formulas[i]?.now,"/own_fats")&&V(i,"/own_fats",e.file);let o="/pipe/beads/own_tips";e===a.beside.own_tips&&n(a.run.now,o)&&V("run",o,e.file)}var no=[],Lo=[],Li=()=>no.at(-1),Ml=()=>Lo.at(-1);function as(e){no=[...no,e],Lo=[],f({list_told:e.words}),W(e.words)}async function cm(){let e=Li();e&&(await e.undo(),no=no.slice(0,-1),Lo=[...Lo,e],f({list_told:""}),W("Undone"),await rt())}async function pm(){let e=Ml();e&&(await e.redo(),Lo=Lo.slice(0,-1),no=[...no,e],f({list_told:e.words}),W("Redone"),await rt())}async function rt(){let[e,t]=await Promise.all([Sr(),dc()]);f({files:e,removed:t})}async function mm(e,t){let{$schema:n,...o}=JSON.parse((await Re(t.file)).text),i=`${t.name||Eo(t.file)}, copy`,r={...o,...e.called&&{[e.called]:i},...e.has_id?{id:crypto.randomUUID()}:{}},l=e.called?e.new_name(Qn(e,r)):gt(i,Fl(t.file)),{file:d}=await it({kind:e,name:l,text:X(r),from:t.file});await rt();let c="";return as({words:`Copied ${t.name||t.file}.`,undo:async()=>c=await ss(d,!0),redo:()=>fi(c)}),d}var Fl=e=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(e)?.[0]??"",Eo=e=>Ve(e).slice(0,-Fl(e).length||void 0),fm=(e,t)=>We(e)+t+Fl(e),dm=e=>[a.run,a.order?.open,...de.map(t=>a.formulas[t]),..._e.map(t=>a.beside[t])].find(t=>t?.file===e);async function hm(e,t,n){let o={name:t.name,note:t.note,stem:Eo(t.file)};await Ol(e,t.file,n),await rt();let i=fm(t.file,n.stem);as({words:`Changed ${n.name||i}.`,undo:()=>Ol(e,i,o),redo:()=>Ol(e,t.file,n)})}async function Ol(e,t,{name:n,note:o,stem:i}){let r=dm(t),l=r??await Pe(e,t),{note:d,...c}=l.now,p={...c,...o&&{note:o}},m=e.called?A(p,`/${e.called}`,n||void 0):p;if(X(m)!==X(l.now)&&(r&&Oo(r)&&to(),r===a.order?.open&&a.order&&Mo(a.order),be(l,m),await Ft(l),l.theirs))throw new Error(`${t} was changed outside this page just now. Look at it again.`);let _=fm(t,i);if(_===t)return;let{renamed_in:$}=await lc(t,_);r&&Dp(r,_);for(let y of $){let x=dm(y);x&&await Op(x)}}async function ss(e,t){let{removed:n}=await uc(e,t);a.run.file===e&&yo(),a.order?.open.file===e&&f({order:void 0});let o=_e.map(i=>a.beside[i]).find(i=>i?.file===e);return o&&os(o),n}async function gm(e,t){let n=await ss(e.file,t);await rt(),as({words:`Removed ${e.name||e.file}.`,undo:()=>fi(n),redo:async()=>n=await ss(e.file,!0)})}async function _m({removed:e,file:t,name:n}){await fi(e),await rt();let o="";as({words:`${n||t} is back.`,undo:async()=>o=await ss(t,!0),redo:()=>fi(o)})}async function $m({removed:e,file:t,name:n}){f({removed:await cc(e),list_told:""}),W(`${n||t} is deleted for good.`)}async function wn(){for(let e of["pour","pipe"]){let t=w(a.run.now,`/${e}/formula`);typeof t=="string"&&t?await ib(e,je(t,a.files?.formulas)):Mt(e,void 0)}}async function ib(e,t){if(a.formulas[e]?.file===t)return;let n=de.map(o=>a.formulas[o]).find(o=>o?.file===t);if(Mt(e,n),!n)try{let o=await Cl(t);Mt(e,o),U(o)&&$e("unwritten",{file:o}),o.theirs&&$e("conflict",{file:o})}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o}}async function Cl(e){let t=await Pe(bo,e);return U(t)&&Do(t),t}var Ei=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function Bo(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=r=>20+t+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:l,indices:d,material:c}]})=>({name:r,positions:new Float32Array(e,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(e,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function bm(e,t,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:d,indices:c}=e;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let $=3*c[p+_],y=3*c[p+(_+1)%3],x=d[$+i]-t,z=d[y+i]-t;if(x>0==z>0)continue;let ze=x/(x-z),Wn=[1e3*(d[$]+ze*(d[y]-d[$])),1e3*r*(d[$+o]+ze*(d[y+o]-d[$+o]))];x>0?m.push(Wn):m.unshift(Wn)}m.length===2&&l.push([m[0],m[1]])}return l}function ym(e){let t=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of e){let r=t(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of e){let r=[],l=n.get(t(i[0]))?.shift();for(;l;)r.push(l[0]),l=n.get(t(l[1]))?.shift();r.length>2&&o.push(r)}return o}function Bi(e){let t=e.positions,[n,o,i,r,l,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<t.length;p+=3)i=Math.min(i,t[p]),r=Math.max(r,t[p]),l=Math.min(l,t[p+1]),d=Math.max(d,t[p+1]),n=Math.min(n,t[p+2]),o=Math.max(o,t[p+2]);let c=n+(o-n)*.50137;return{loops:ym(bm(e,c)),left:1e3*i,right:1e3*r,floor:1e3*l,brim:1e3*d,cut_y:-1e3*c}}function vm(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(r=>ym(bm(e,n+r*o,"level"))).reduce((r,l)=>wm(l)>1.001*wm(r)?l:r)}function wm(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function Ll(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([r,l],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(l,p)>t||Math.max(l,p)<t))for(let m of l===p?[r,c]:[r+(t-l)/(p-l)*(c-r)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[e.left,e.right]}var km=40,rb=2e3,El=0;async function xm(e){let t=await Pt({kind:"glb",gauge:e}),n=Bo(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Wo(e){let[t,n]=await Promise.all([un(e),xm(e)]),o=Bi(n);return{gauge:t,outline:o,above:vm(n,o)}}async function sb(e){let{pockets:t}=await un(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:km},(i,r)=>`${(n*(r+1)/km).toFixed(4)} mm`);return un({...e,depth:o})}function wt(){ab()}async function ab(){let e=w(a.run.now,"/pour/mould");if(typeof e!="string")return;let t=++El,n=je(e,a.files?.moulds);try{let[o,i]=await Promise.all([sb({file:n}),xm({file:n})]);t===El&&f({measured:{mould:n,gauge:o,outline:Bi(i)},measuring_failed:void 0})}catch(o){if(t!==El)return;if(!(o instanceof v))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(wt,rb)}}var Wi=()=>f({own_fats:{}});function bn(e){let t=Ii(e);return Array.isArray(t)?[...t,...a.fats]:a.fats}function Ii(e){let t=a.formulas[e],n=w(t?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=a.beside.own_fats;if(o&&[We(t.file)+n,n].includes(o.file))return Rm(o.now)??"none";let i=`${t.file}
${n}`,r=a.own_fats[i];return r||(Tm(i,"waiting"),lb(n,t.file).then(l=>Tm(i,l)),"waiting")}var Tm=(e,t)=>f({own_fats:{...a.own_fats,[e]:t}});async function lb(e,t){for(let n of new Set([We(t)+e,e])){let o=Rm(await ub(n));if(o)return o}return"none"}var Rm=e=>Array.isArray(e?.fats)?e.fats.map(db):void 0;async function ub(e){try{return he((await Re(e)).text)}catch{return}}var db=({id:e,name:t,saponification_value:n})=>({id:String(e??""),name:String(t??e??""),own:cb(n)});function cb(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var Io=[],ji;function ls(){Io.length=0;for(let{file:e,shipped:t}of a.files?.moulds??[])t||Io.push(e);ji===void 0&&Am()}function Sm(e){let t=a.own_moulds[e];return!t&&e!==ji&&!Io.includes(e)&&Io.push(e),ji===void 0&&Io.length&&Am(),t}async function Am(){for(;(ji=Io.shift())!==void 0;){let e=ji,t=await pb(e);f({own_moulds:{...a.own_moulds,[e]:t}})}}async function pb(e){try{let{pockets:t}=await un({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof v))throw t;let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var Om=()=>f({own_tips:{}}),Bl=!1;function Hi(){return!a.tips&&!Bl&&(Bl=!0,bc().then(e=>f({tips:e}),Mm).finally(()=>Bl=!1)),a.tips??[]}function Wl(e){let t=Xt(e),n=a.beside.own_tips;if(n?.file===t)return Dm(n.now);let o=a.own_tips[t];return o||!e||a.typed?o??[]:(Pm(t,[]),Re(t).then(({text:i})=>Pm(t,Dm(he(i))),Mm),[])}var Pm=(e,t)=>f({own_tips:{...a.own_tips,[e]:t}});function Dm(e){let t=e?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function Mm(e){if(!(e instanceof v))throw e}var us=300,mb=5e3,Bm=2e3,fb=500,Fm=!1,qi=new AbortController,Wm=()=>qi.abort(),Im=()=>document.visibilityState==="hidden";function ds(){if(Fm)return;Fm=!0;let e=async()=>{qi=new AbortController;let t=await hb(qi).then(()=>Im()?mb:us,()=>qi.signal.aborted?us:Bm);await Cm(us),await Cm(t-us,qi.signal),e()};e()}var Cm=(e,t)=>new Promise(n=>{if(e<=0||t?.aborted)return n();setTimeout(n,e),t?.addEventListener("abort",()=>n())}),jm=()=>[a.run,...a.order?[a.order.open]:[],...a.mould?[a.mould.open]:[],...Ro()],Hm=()=>new Map(jm().flatMap(Mp)),Lm=()=>JSON.stringify([[...Hm().keys()],[...hl().keys()],Xr()?.run??null]);async function hb(e){let[t]=Wp();t!==void 0&&await Em(t);let[n,o]=[Hm(),hl()],i=new Map([...o,...n]),r=[...o].every(([c,p])=>i.get(c)===p),l=r&&!Im()?await gb(i,e):await hi(i,Xr());l.bench!==void 0&&await Xn(),gl(l.unreadable),await _b(n,l);let[d]=Bp(o,r?l:await hi(o));d!==void 0&&await Em(d)}async function gb(e,t){let[n,o]=[Lm(),Date.now()],i=window.setInterval(()=>{(Lm()!==n||Date.now()-o>pc+Bm)&&t.abort()},fb);try{return await mc(e,Xr(),t.signal)}finally{window.clearInterval(i)}}async function _b(e,{changed:t}){let n=Ro();for(let o of jm()){let i=e.get(o.file);i===void 0||!(o.file in t)||(n.has(o)?await $b(o,i):await cl(o,i,fl,()=>{}))}}async function $b(e,t){await cl(e,t,fl,()=>_l(e.file))&&(Wi(),re())}async function Em(e){_l(e),await pl(),Wi(),Om(),f({measured:void 0}),wt(),ls(),await Promise.all([wn(),Co(!0)]),re()}async function Nm(e){let t=await Ac();f({files:t});let n=Sc(t,e.run);try{await yn(n,n===e.run||!e.run?e.view:void 0)}catch(o){let i=o instanceof v?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Um(){let[e,t]=await Promise.all([$c(),wc()]);f({fats:e,catalogue:t})}var wb=()=>new Promise(e=>setTimeout(e,400)),Il={};async function yn(e,t="weigh"){if(!e)return f({view:"runs"});let n=Il={name:e},o=a.view;a.run.file&&U(a.run)&&await Ct();let i=await Pe(zn,e);if(Il!==n||(yo(i),Zr(),await Promise.race([qp(),wb()]),a.run!==i))return;a.view===o&&Il===n&&f({view:t}),localStorage.setItem("run",i.file),U(i)&&(Do(i),fn());let r=So().finally(wt);await Promise.all([r,wn(),Co()]),ds()}var qm=()=>(a.files?.studios??[]).some(e=>e.file==="studio.json");async function cs(e){let t=a.run.now,n=t.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:e.name,sell:e.sell,pour:{mould:e.mould,formula:e.formula}};e.slice&&(o.cut={bar:{thickness:e.slice},...qm()?{}:{kerf:""}}),qm()||(o.note=`Losses, scales and spoilage were taken over from "${String(t.name)}": check them.`,t.spoilage!==void 0&&(o.spoilage=t.spoilage),o.losses={pour:n.pour??{}},o.scales=t.scales??{},t.money&&!a.run.shipped&&(o.money=t.money));let{file:i}=await it({kind:zn,name:gt(e.name,".run.json"),text:X(o)});se("set-up pour"),e.slice&&se("set-up cut"),await yn(i,"set-up")}var bb="examples/plain_bars.run.json";function st(e){Wi();let t=Qt(a.view)?a.view:a.came_from;f({view:"formula",came_from:t,formula_of:e,picking:void 0,typed:void 0})}async function Ni(e){let t=["pour","pipe"].find(n=>a.run.file&&a.formulas[n]?.file===e);if(t)return st(t);a.run.file||await yn(bb,"reading"),await yb(e)}async function yb(e){let t={past:a.past,future:a.future};f({run_steps:t,past:[],future:[]});try{Mt("apart",await Cl(e))}catch(n){throw f({...t,run_steps:void 0}),n}f({plan:void 0,complaint:void 0}),st("apart"),So()}async function vb(){let e=a.formulas.apart!==void 0;return await ps()?(f({view:e?"weigh":a.came_from,typed:void 0}),!0):!1}async function ps(){return a.formulas.apart?await kb()?(So(),!0):!1:!0}async function kb(){try{await hn()}catch(t){if(!(t instanceof v))throw t;return f({complaint:t.complaint}),!1}if(a.formulas.apart?.theirs)return W("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;Mt("apart",void 0);let e={...a.dangers,apart:[]};return f({dangers:e,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function zm(e){let t=a.view==="formula"&&a.formulas[a.formula_of]===e,n=a.formulas.apart===e;for(let o of["pour","pipe"])a.formulas[o]===e&&Mt(o,void 0);n&&await ps(),t&&f({view:n?"formulas":"set-up",typed:void 0})}async function jl(e){let{file:t}=a.formulas.apart;await vb()&&V("run",`/${e}/formula`,t)}var xb=e=>({schema:"brimwright.formula/2",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Jm=e=>Km(xb(e));async function Vm(e,t){let{$schema:n,...o}=JSON.parse((await Re(e)).text);await Km({...o,name:t},e)}async function Km(e,t){let n=gt(String(e.name),".formula.json"),{file:o}=await it({kind:bo,name:n,text:X(e),from:t});await Ni(o)}var Tb=30,Qm=0,Hl=!1,ql=!1;function Nl(e,t,n){let o=t==="mesh"?a.mesh:void 0;f({mould:{way:t,title:n,open:e,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),zl()}var Lt=()=>f({mould:void 0,mesh:void 0}),jo=(e,t,n)=>Nl(Qn(Ie,e),t,n);async function Gm(e,t){let n=await Pe(Ie,e,t?crypto.randomUUID():e),o=String(n.now.name??e);t&&b(n,{now:{...n.now,name:""}}),Nl(n,"form",t?`A copy of ${o}`:`Change ${o}`)}async function Ym({id:e,file:t,text:n}){let o=t?await Pe(Ie,t,e):Qn(Ie,JSON.parse(n),e);Nl(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var Y=()=>a.mould,L=()=>Y().open.now;function we(e,t){Mo(Y(),e),be(Y().open,A(L(),e,t))}var Zm=()=>ts(Y()),Xm=()=>ns(Y()),Rb=["name","note","owned","unmould_after"];function Ul(e){let t=L(),n=Object.keys({...e,...t}).filter(l=>e?.[l]!==t[l]);(!e||n.some(l=>!Rb.includes(l)))&&b(Y(),{is_old:!0});let i=n.some(l=>Y().complaint?.field===`/${l}`),r=n.some(l=>!["name","note"].includes(l));(Y().is_old||i||r)&&zl()}function zl(){clearTimeout(Qm),Qm=window.setTimeout(()=>{Sb()},Tb)}async function Sb(){if(Hl)return void(ql=!0);let{mould:e}=a;if(!e)return;let t=e.open.now;if(!(!ht(t,"shape")&&!ht(t,"mesh"))){if(xi(t).length)return b(e,{complaint:void 0});Hl=!0;try{let n=Ie.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Wo(o);e.open.now===t&&b(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof v))throw n;e.open.now===t&&Jl(n)}finally{Hl=!1,ql&&zl(),ql=!1}}}function Jl(e){let{field:t,problem:n,remedy:o,keep:i,entry:r}=e.complaint,l=t?`${n}; ${o}`:e.message;b(Y(),{complaint:{field:Hr(L(),t),line:l,keep:i&&{...i,at:Hr(L(),i.at)},about:r===void 0?void 0:Hr(L(),`${t}/${r}`)}})}var ef={};async function Ui(e){let t=ef={name:e},n=a.view;if(a.order?.open.file!==e){a.order&&U(a.order.open)&&await Ct(a.order.open);let o=await Pe(Jn,e);if(ef!==t)return;let i=U(o)?[o.saved??{}]:[];f({order:{open:o,past:i,future:[],times:""},typed:void 0}),U(o)&&fn(o)}a.view===n&&f({view:"order",typed:void 0}),ds()}function tf(){f({order:void 0,...a.view==="order"?{view:"orders"}:{}})}async function nf(e){let t={schema:"brimwright.order/1",id:crypto.randomUUID(),for:e,lines:[]},n=Jn.new_name(Qn(Jn,t)),{file:o}=await it({kind:Jn,name:n,text:X(t)});await Ui(o)}var De=()=>a.order,of=()=>ts(De()),rf=()=>ns(De());var ms=e=>Object.values(a.formulas).includes(e),Ho=e=>Object.values(a.beside).includes(e),sf=e=>`${String(w(e,"/pour/formula"))}
${String(w(e,"/pipe/formula"))}`;function Ab(e,t){w(e,"/pour/mould")!==w(t,"/pour/mould")&&wt(),sf(e)!==sf(t)&&wn(),re(),fn()}var Pb=re;function Db(e,t){for(let n of["pour","pipe"]){if(a.formulas[n]!==e)continue;let o=`/${n}/formula`,i=r=>String(w(r,o)??"").endsWith(Ve(t))?A(r,o,e.file):r;Tl(a.run,i),i(a.run.now)!==a.run.now&&be(a.run,i(a.run.now))}}async function Ob(e){e===a.run?(yo(),localStorage.removeItem("run"),f({view:"runs"})):e===a.mould?.open?Lt():e===a.order?.open?tf():Ho(e)?os(e):await zm(e),await rt(),a.run.file&&re()}function af(){_t("edited",({file:e,before:t})=>{e===a.run?Ab(t,e.now):ms(e)||Ho(e)?Pb():e===a.mould?.open?Ul(t):e===a.order?.open&&fn(e)}),_t("gave_way",({file:e})=>{if(e===a.mould?.open)return Ul();e!==a.order?.open&&(e===a.run&&(wt(),wn().then(re)),re())}),_t("left_deleted",({file:e})=>{Ob(e)}),_t("unwritten",({file:e})=>{e===a.run||e===a.order?.open?Ct(e):(ms(e)||Ho(e))&&re()}),_t("conflict",({file:e})=>{(ms(e)||Ho(e))&&f({is_old:!0})}),_t("renamed",({file:e})=>{Ho(e)&&a.held_open!==void 0&&f({held_open:e.file}),e===a.run&&(localStorage.setItem("run",e.file),wt(),wn()),re()}),_t("copied",({file:e,from:t})=>{ms(e)&&Db(e,t),Ho(e)&&um(e,t),a.held_open===t&&f({held_open:e.file}),e===a.run&&(Up(t),localStorage.setItem("run",e.file),Co().then(re))})}var bt=s`<span aria-hidden="true">⚠</span> Danger`;function zi(e,t="",n){let o=vn(e,n);return o.length?s`<div class="dangers" id=${t||u}>
    ${o.map(i=>s`<p class="danger"><strong>${bt}</strong> ${i}</p>`)}
  </div>`:u}function vn(e,t){let n=e==="pour"?"pipe":"pour";return a.dangers[e==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>e==="apart"||o.batter!==n).filter(o=>t===void 0||o.batch_pieces===void 0||o.batch_pieces===t).map(o=>o.text)}function lf(){let e=nt(a.view)||a.view==="order"||Si()==="apart",t=a.dangers.run.map(({text:n})=>({from:e?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var uf=()=>lf().length>0;function df(){let e=lf(),t=Cb();return!e.length&&!t?u:s`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?s`<div role="alert" class="dangers">
            ${e.map(({from:n,text:o})=>s`<p class="danger"><strong>${bt}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${t?s`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${Mb()?s`<button type="button" @click=${Fb}>To the question</button>`:u}
          </div>`:u}
  </section>`}var Mb=()=>Zt(Si())!==void 0&&!nt(a.view);function Fb(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function Cb(){if(!a.run.file||a.view==="reading")return"";let e=Zt(Si());return e&&Gn(e)?`${e.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`:e?`${e.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:a.is_old&&a.changed_beside?`${a.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}var en={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},fs=e=>(...t)=>({_$litDirective$:e,values:t}),qo=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:Lb}=Qc,cf=e=>e;var mf=e=>e.strings===void 0,pf=()=>document.createComment(""),No=(e,t,n)=>{let o=e._$AA.parentNode,i=t===void 0?e._$AB:t._$AA;if(n===void 0){let r=o.insertBefore(pf(),i),l=o.insertBefore(pf(),i);n=new Lb(r,l,e,e.options)}else{let r=n._$AB.nextSibling,l=n._$AM,d=l!==e;if(d){let c;n._$AQ?.(e),n._$AM=e,n._$AP!==void 0&&(c=e._$AU)!==l._$AU&&n._$AP(c)}if(r!==i||d){let c=n._$AA;for(;c!==r;){let p=cf(c).nextSibling;cf(o).insertBefore(c,i),c=p}}}return n},kn=(e,t,n=e)=>(e._$AI(t,n),e),Eb={},hs=(e,t=Eb)=>e._$AH=t,ff=e=>e._$AH,gs=e=>{e._$AR(),e._$AA.remove()};var F=fs(class extends qo{constructor(e){if(super(e),e.type!==en.PROPERTY&&e.type!==en.ATTRIBUTE&&e.type!==en.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!mf(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===Se||t===u)return t;let n=e.element,o=e.name;if(e.type===en.PROPERTY){if(t===n[o])return Se}else if(e.type===en.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return Se}else if(e.type===en.ATTRIBUTE&&n.getAttribute(o)===t+"")return Se;return hs(e),t}});var Be=e=>e.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function tn(e,t){let n=Be(t).split(/\s+/).filter(Boolean),o=i=>n.every(r=>Be(i).includes(r));return o(`${e.name} ${e.id.replaceAll("_"," ")}`)?e.name:"own"in e?void 0:[...e.also_called,e.inci].find(o)}function _s(e,t){let n=Be(e).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!t.some(r=>r.id===i))return i}}var ws=28.349523125,$f=25.4,Bb=29.5735295625;function Et(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function T(e,t){return Wb(Et(e,t))}var Wb=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function at(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${Et(e,t)} %`:Vl(e)?"just below 0 %":"0.0 %"}var Vl=e=>e<0||Object.is(e,-0),wf=e=>Math.abs(e-Math.round(e))<1e-6;function hf(e){return e?[0,1,2,3].find(t=>wf(e*10**t))??3:0}function gf(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function Ib(e){return[0,1,2].find(t=>e.every(n=>wf(n*10**t)))??3}function bs(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function Oe(e,t){let n=r=>e[`${t}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-Ib([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var bf=.001;function $s(e,t,n,o,i=1e-9){let r=10**n;return Et(o==="nearest"?e/t:Math.floor((e+i)/t*r)/r,n)}var _f=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function jb(e){if(!_f.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return _f.find(t=>Math.abs(t*ws-e)<.6*bf)}function le(e,t,n="nearest"){let o=t.scale_step_g||.1,i=jb(o),r=Math.min(.6*bf,o/2),l=i?$s(t.g,1,gf(o),n):$s(t.g,1,hf(o),n,r),d=i?$s(t.g,ws,hf(i),n,r):$s(t.g,ws,gf(o/ws),n),[c,p]=[`${t.g_text??l} g`,`${t.oz_text??d} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[p,c]:bs(e,c,p)}var C=(e,t,n=1,o="nearest")=>le(e,{g:t,scale_step_g:10**-n},o);function ke(e,t,n=1){return bs(e,`${Et(t,n)} ml`,`${Et(t/Bb,2)} US fl oz`)}function ye(e,t){return bs(e,`${T(t,1)} mm`,Hb(t))}function Hb(e){let t=Math.round(Math.abs(e)/$f*32),n=e<0&&t?"-":"",o=t%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(t/32),l=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",l].filter(Boolean).join(" ")} in`}var Kl=([e])=>e,S=([e,t])=>t?`${e} (${t})`:e;function yf(e,t){return bs(e,`${Et(t,0)} \xB0C`,`${Et(t*1.8+32,0)} \xB0F`)}function yt(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??$f;return n*o}function Bt(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var Wt=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function Me(e){let t=new Date(/^\d{4}-\d\d-\d\d$/.test(e)?`${e}T12:00`:e);return Number.isNaN(t.getTime())?e:t.toLocaleDateString("en-GB",{dateStyle:"medium"})}function xn(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}function xf(e){let t=yt(e.round?.radius);if(t)return vf(t,M`<circle class="plain" r=${t} />`);let n=qb(e);if(!n)return u;let o=Math.max(...n.map(([i,r])=>Math.hypot(i,r)));return o>0?vf(o,M`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):u}var vf=(e,t)=>s`<svg class="tip" viewBox="${-1.1*e} ${-1.1*e} ${2.2*e} ${2.2*e}" aria-hidden="true">
    ${t}
  </svg>`;function qb({star:e,outline:t}){if(e&&typeof e=="object"&&!Array.isArray(e))return Nb(e);if(!Array.isArray(t))return;let n=t.map(o=>[kf(o,"x"),-kf(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function kf(e,t){let n=String(e[t]??"").trim();return(n.startsWith("-")?-1:1)*(yt(n.replace(/^-/,""))??NaN)}function Nb({points:e,outer_radius:t,inner_radius:n}){let[o,i]=[yt(t),yt(n)];if(!(!o||!i||typeof e!="number"||e<3||e>60))return Array.from({length:2*e},(r,l)=>{let d=Math.PI*l/e,c=l%2?i:o;return[c*Math.sin(d),-c*Math.cos(d)]})}var Ql=!1;function Tf(e){let{plan:t,explanation:n}=a,o=n?.of!==t;return o&&!Ql&&zb(),{workings:Ub(n?.workings,e),complaint:n?.complaint,is_old:o}}function Ub(e,t){let n=e?.get(t);return n?[n]:[...e?.values()??[]].filter(({of:o})=>o.startsWith(`${t}.`))}async function zb(){let{plan:e,planned:t}=a;if(!(!e||!t)){Ql=!0;try{let{how:n}=await fc(t);f({explanation:{of:e,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof v))throw n;f({explanation:{of:e,workings:new Map,complaint:n.message}})}finally{Ql=!1}}}var Rf=M`<path class="wall" d="M30 10l8 52h44l8-52" />`,Gl={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:M`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${Rf}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:M`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:M`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${Rf}<path class="measure" d="M20 10h80" />`}};var Yl=e=>`term ${e}`;function nn(e){return s`<button
    type="button"
    class="ask-term"
    aria-expanded=${a.open.has(Yl(e))?"true":"false"}
    aria-label="What ${Gl[e].name} means"
    @click=${()=>Ee("open",Yl(e))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function vt(e){if(!a.open.has(Yl(e)))return u;let{name:t,words:n,drawing:o}=Gl[e];return s`<span class="term-words" role="note"
    >${o?s`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${t}</b>: ${n}</span
    ></span
  >`}var Tn=e=>s`<span class="term">${nn(e)}${vt(e)}</span>`;function O({key:e,label:t,shown:n,of:o,working:i,size:r="plain",note:l,term:d}){let c=a.open.has(e),p=`sum-${e.replaceAll(/[^\w]/g,"-")}`;return s`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Ee("open",e)}
    >
      <span class="name">${t}${l?s`<small>${l}</small>`:u}</span>
      <span class="value ${r==="weigh"?"large":""} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?s` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?s`${nn(d)}${vt(d)}`:u}
    ${c?s`<div class="sum" id=${p}>${i?ys(i):Zl(o)}</div>`:u}
  </div>`}var oo=(e,t,n)=>O({key:e,label:t,shown:["",""],of:n});function Zl(e){let{workings:t,complaint:n,is_old:o}=Tf(e);return t.length?s`<div class=${o?"old":""}>${t.map(ys)}</div>`:o?s`<p class="old" role="status">Asking how it is calculated ...</p>`:s`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function ys({formula:e,with:t,sum:n,rounded:o,comes_to:i,sources:r}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return s`<p class="formula">${e}</p>
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
    ${r.length?s`<p class="sources">From: ${r.join("; ")}.</p>`:u}`}var io,Ji=[],ro=()=>io!==void 0;function Ge(e,t,n,o){if(!io||io.some(r=>r.id===n))return;let i=Ji.flatMap(({part:r})=>r??[]);io.push({of:e,at:t,id:n,label:o,part:i.at(-1)??"",folds:Ji.flatMap(({fold:r})=>r??[])})}function lt(e,t){Ji.push(e);try{return t()}finally{Ji.pop()}}var Sf=()=>{},Af=e=>{Sf=e},vs,Jb=()=>[a.run.now,...Object.values(a.formulas).map(e=>e.now),...Object.values(a.beside).map(e=>e.now),a.formulas.apart,a.plan,a.fats,a.files];function Uo(){if(ro())return[];let e=Jb();return vs?.of.length===e.length&&e.every((n,o)=>n===vs.of[o])||(vs={of:e,wanted:Vb()}),vs.wanted}function Vb(){io=[],Ji=[];try{return Sf(),io}finally{io=void 0}}function Pf(e){a.touched.has(e)||f({touched:new Set(a.touched).add(e)})}function Df(e,t){if(a.has_asked)return!1;let n=Uo().filter(o=>o.of===e&&(o.at===t||o.at.startsWith(`${t}/`)));return n.length>0&&n.every(o=>!a.touched.has(o.id))}var ee=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function ks(e){return e==="order"?a.order?.quoted?.complaint:a.complaint??(a.quoted?.of===a.plan?a.quoted?.complaint:void 0)}function He(e,t){let n=ks(e);if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return ut(e)&&!Df(e,n.field)?G(n):void 0}function Fe(e,t){return ks(e)?.field===t?He(e,t):void 0}function ut(e){let t=ks(e),n=Fo(e)?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function Kb(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(g(e,n)??{}).length>1?t:n}function It(){let e=ks();if(e)for(let t of["run",...de,..._e])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=He(t,n)&&document.getElementById(ee(t,n));if(o)return o}}function Qb(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=Gb(e,n);return o&&Wt(t)?`${t.trim()} ${o}`:t}function Gb(e,t){return Bt(g(t,e.at))||e.unit||""}var xe=(e,t,n)=>t||n?s`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:u,Xl=!1;addEventListener("pointerdown",()=>Xl=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>Xl=!1,!0);var Yb=()=>f({typed:void 0});function eu(e){let{id:t}=e.target,n=()=>{Yb(),Pf(t)};Xl?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var Zb=e=>typeof e=="string"&&e.startsWith("?")?e.slice(1).trim():void 0,Xb=({unit:e="",told:t=""},n)=>[e.replace("cm2","cm\xB2"),t,n?"required":""].filter(Boolean).join(", ")||u;function h(e){let t=e.of??"run",n=ee(t,e.at),o=g(t,e.at),i=Zb(o),r=a.typed?.key===n,l=r?a.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||l.trim()===""&&(!e.optional||e.is_due===!0);d&&Ge(t,e.at,n,e.label);let c=He(t,e.at),p=$=>{let y=$.target.value;f({typed:{key:n,text:y}});let x=Qb(e,y);V(t,x===void 0&&e.takes_part?Kb(t,e.at):e.at,x)},_=(r&&typeof o=="string"&&o!==l?`taken as ${o}`:"")||e.hint||i;return s`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${c?"wants":""}"
  >
    ${tu(s`<label for=${n} data-said=${Xb(e,d)}>${e.label}</label>`,e.term)}
    <input
      id=${n}
      type=${e.date?"date":"text"}
      aria-required=${e.optional&&!e.is_due?u:"true"}
      .value=${F(l)}
      @input=${p}
      @blur=${eu}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.date?u:e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${xe(n,c,_)} ${e.term?vt(e.term):u}
  </div>`}var tu=(e,t)=>t?s`<div class="labelled">${e}${nn(t)}</div>`:e;function Rn(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var j=e=>()=>document.getElementById(e),te=(e,t)=>j(ee(e,t)),kt=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),ey=()=>document.activeElement;function K(e){requestAnimationFrame(()=>Rn(e()))}function on(e,t,n,o=ey){W(t),rm(e,n),K(o)}function E(e,t,n,o,i){on(e,t,r=>A(r,n,o),i)}var dt=(e,t,n)=>`${ee(e,t)}-${n}`;function H(e,t){let n=Fe(e,t);return n?s`<p id=${ee(e,t)} class="complaint" tabindex="-1">${n}</p>`:u}var Of=(e,t,n)=>t.map(([o,i])=>s`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function oe(e,t,n,o){return s`<div class="choice" role="group" aria-label=${e}>${Of(t,n,o)}</div>`}function R({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:l,puts:d,then:c,hint:p,optional:m,term:_}){let $=i?dt(e,n,t.replaceAll(/\W+/g,"-")):ee(e,o),y=r===void 0&&!m;y&&Ge(e,o,$,t);let x=i?void 0:Fe(e,o),z=ze=>{if(ze===r)return;let Wn=l.find(([ow])=>ow===ze)[1];E(e,`${t}: ${Wn}`,n,d(ze),c&&te(e,c(ze)))};return s`<div class="field asked ${x?"wants":""}">
    ${tu(s`<p class="question" id="${$}-label" data-said=${y?"required":u}>${t}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${$}
      tabindex="-1"
      aria-labelledby="${$}-label"
      aria-describedby=${x||p?`${$}-said`:u}
    >
      ${Of(r,l,z)}
    </div>
    ${xe($,x,p)} ${_?vt(_):u}
  </div>`}function nu(e,t,n,o){let i=ee("run",e),r=Fe("run",e),l=()=>E("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return s`<div class="choice">
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
    ${xe(i,r)}`}function ge({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:r,chosen:l,take:d}){let c=ee(t,n),p=He(t,n),m=l??D(t,n);!m&&!r&&Ge(t,n,c,e);let _=!m||o.some(([x])=>x===m),$=[["",i],..._?[]:[[m,m]],...o];return s`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||r?u:"required"}>${e}</label>
    <select
      id=${c}
      aria-required=${r?u:"true"}
      @change=${x=>{let z=x.target.value;d?d(z):V(t,n,z||!r?z:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${$.filter(([x])=>x||r||!m).map(([x,z])=>s`<option value=${x} .selected=${F(x===m)}>${z}</option>`)}</select
    >${xe(c,p)}
  </div>`}function zo(e,t,n=[]){let o=je(D("run",t),n);return ge({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function xt({of:e="run",at:t,name:n,title:o,add:i,blank:r,body:l}){let d=dt(e,t,"part"),c=dt(e,t,"add"),p=()=>lt({part:o},l);return g(e,t)===void 0?s`<p class="choice">
      <button type="button" id=${c} @click=${()=>E(e,`${o} added`,t,r,kt(d))}>
        ${i}
      </button>
    </p>`:s`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>E(e,`${o} removed`,t,void 0,j(c))}
      >
        Remove
      </button>
    </div>
    ${H(e,t)} ${p()}
  </div>`}var Mf=(e,t)=>`folded ${e} ${t}`,qe=(e,t)=>se(Mf(e,t));function P({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:r}){let l=Mf(e,t);if(ro())return s`${lt({fold:l},r)}`;(i||n.some(p=>He(e,p)))&&se(l);let d=a.open.has(l);return s`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),Ee("open",l)}}>${o}</summary>
    ${d?s`<div class="folded">${r()}</div>`:u}
  </details>`}var k=({of:e="run",at:t})=>ce(e,t),B=({of:e="run",at:t},n)=>dt(e,`${t}/${n}`,"item"),xs=({of:e="run",at:t},n,o)=>dt(e,`${t}/${n}`,o),ty=({of:e="run",at:t})=>ee(e,t);function Vi(e,t,n,o){let{of:i="run",at:r,stays:l,and:d=c=>c}=e;on(i,t,c=>d(A(c,r,n.length||l?n:void 0),n.length),o)}function I(e,t,n){let o=k(e);Vi(e,`${n} added`,[...o,t],kt(B(e,o.length)))}function ny(e,t,n){let o=k(e).filter((l,d)=>d!==t),i=Math.min(t,o.length-1),r=o.length>(e.least??0);Vi(e,`${n} removed`,o,r?j(xs(e,i,"drop")):te(e.of??"run",e.at))}function oy(e,t,n,o){let i=[...k(e)],[r]=i.splice(t,1);i.splice(t+n,0,r);let l=n<0?"earlier":"later",c=t+n===0||t+n===i.length-1?n<0?"later":"earlier":l;Vi(e,`${o} moved ${l}`,i,j(xs(e,t+n,c)))}function q(e,t,n){let o=k(e).length-1,i=o>=(e.least??0),r=e.in_order&&o>0;if(!i&&!r)return u;let l=(d,c,p)=>s`<button
      type="button"
      id=${xs(e,t,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>oy(e,t,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return s`<div class="tools">
    ${r?s`${l(-1,"earlier",t===0)} ${l(1,"later",t===o)}`:u}
    ${i?s`<button
            type="button"
            id=${xs(e,t,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>ny(e,t,n)}
          >
            ×
          </button>`:u}
  </div>`}function Q(e,t,n){let o=ty(e),i=Fe(e.of??"run",e.at);return s`${xe(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${t}
    </button>`}var so="/pipe/beads",rn=`${so}/tip`,iy={of:"run",at:rn},jt={at:`${so}/moves`,in_order:!0},ou="\0own",Ef={tip:"",bead_to_opening:"",moves:[]},Tt=(e,t)=>({name:e,label:t,kind:"length"}),Ff={name:"count",label:"How many",kind:"count"},Cf=Tt("circle_radius","Radius of their circle"),iu={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Tt("diameter","Diameter"),Tt("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[Tt("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Tt("start_radius","Radius at the start"),Tt("end_radius","Radius at the end"),Tt("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Tt("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[Ff,Cf,Tt("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[Ff,Cf,Tt("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Tt("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function Bf(e){return s`${sy()} ${ru()?Rs(iy):cy()}
    ${h({label:"Bead \xF7 tip opening",at:`${so}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${k(jt).map((t,n)=>_y(t,n,e))}</div>
    ${by()}`}var ru=()=>typeof g("run",rn)=="object",Wf=()=>String(g("run",`${so}/own_tips`)??g("studio","/own_tips")??"");function ry(){let e=Wf(),t=e?Wl(e):[];return g("run",`${so}/own_tips`)===void 0?[...t,...Hi()]:t}function sy(){let e=n=>n===ou?E("run","a tip of your own",rn,{name:"",round:{radius:""}},ly):V("run",rn,n),t=ry().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return s`${ge({label:"Tip",at:rn,answers:[...t,[ou,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:ru()?ou:void 0})}
  ${ru()?u:P({name:"tips",pointers:[`${so}/own_tips`],summary:"Tips of a file of your own",body:()=>h({label:"File of tips",at:`${so}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var ay=dt("run",rn,"own"),ly=kt(ay);async function uy(){let e=g("run",rn);if(!await Pl())return;let t=ce("own_tips","/tips"),n=dy(String(e.name).trim()||"My tip",t);gn([["own_tips",o=>A(o,`/tips/${t.length}`,{...e,name:n})],["run",o=>A(o,rn,n)]]),W(`${n} kept in ${a.beside.own_tips.file}`)}function dy(e,t){for(let n=1;;++n){let o=n===1?e:`${e} ${n}`;if(![...t,...Hi()].some(i=>i.name===o))return o}}function cy(){let e=D("run",rn),t=Wf();if(!e||!t||!Wl(t).some(o=>o.name===e))return u;let n=ce("own_tips","/tips").findIndex(o=>o.name===e);return n<0?s`<button type="button" @click=${()=>{Pl()}}>Change this tip of my own</button>`:Rs({of:"own_tips",at:`/tips/${n}`})}var Lf=[["round","Round"],["star","Star"],["outline","Another outline"]],Ts={x:"",y:""},py={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Ts,Ts,Ts]};function Rs({of:e,at:t}){let n=Lf.map(([r])=>r),o=n.find(r=>g(e,`${t}/${r}`)!==void 0),i=r=>({...ae(e,t,n),[r]:py[r]});return s`<div class="part" id=${dt(e,t,"own")} role="group" aria-label="My own tip">
    ${H(e,t)} ${my({of:e,at:t})}
    ${R({of:e,question:"Opening of the tip",at:t,is_told_elsewhere:!0,chosen:o,answers:Lf,puts:i})}
    ${o?hy({of:e,at:t},o):u}
    ${P({of:e,name:e==="run"?"hand":`hand ${t}`,pointers:[`${t}/hand`,`${t}/note`],summary:"Correction for your hand",body:()=>fy({of:e,at:t})})}
    ${e==="run"?s`<button type="button" @click=${()=>{uy()}}>Keep this tip for all my runs</button>`:s`<p class="hint">It stands in ${a.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var my=({of:e,at:t})=>e==="run"?h({label:"What you call the tip",at:`${t}/name`}):s`<p class="part-title">${D(e,`${t}/name`)}</p>`;function fy({of:e,at:t}){let n=`${t}/hand`,o=i=>g(e,i)!==void 0;return s`<div class="row">
      ${h({of:e,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?h({of:e,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?s`<button
            type="button"
            @click=${()=>E(e,"correction removed",n,void 0,kt(dt(e,t,"own")))}
          >
            Leave the correction out
          </button>`:u}
    ${h({of:e,label:"Note on the tip",at:`${t}/note`,optional:!0})}`}function hy(e,t){if(t==="outline")return gy(e);let{of:n,at:o}=e,i=(r,l)=>h({of:n,label:l,at:`${o}/${t}/${r}`,unit:"mm",short:!0});return s`<div class="row">
    ${t==="round"?i("radius","Radius of the opening"):s`${h({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function gy({of:e,at:t}){let n={of:e,at:`${t}/outline`};return s`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${k(n).map((o,i)=>s`<div class="row" id=${B(n,i)}>
          ${h({of:e,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${h({of:e,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${q(n,i,`corner ${i+1}`)}
        </div>`)}
    ${Q(n,"One more corner",()=>I(n,Ts,"corner"))}`}function _y(e,t,n){let o=iu[String(e.move)],i=`${jt.at}/${t}`,r=`${t+1}. ${o?.words??String(e.move)}`;return s`<div class="part" id=${B(jt,t)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${q(jt,t,r)}
    </div>
    ${H("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>$y(i,l))}
      ${h({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${wy(t,n)}
  </div>`}function $y(e,{name:t,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return h({label:n,at:`${e}/${t}`,unit:l,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function wy(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==k(jt).length)return u;let i=o.length_mm>0?`${T(o.length_mm/10,1)} cm of bead`:"";return O({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:ke(a.units,o.volume_ml),of:`pipe.visible_by.moves.${e}.volume_ml`})}function by(){let e=o=>({move:o,...Object.fromEntries(iu[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=ee("run",jt.at),n=Fe("run",jt.at);return k(jt).length||Ge("run",jt.at,t,"What the tip does"),s`${xe(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:u}
    >
      ${Object.entries(iu).map(([o,{words:i,does:r}])=>s`<button type="button" @click=${()=>I(jt,e(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function Ht(e,t=()=>{}){if(!e.theirs)return u;let n=Gn(e),o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{Rp(e),t()};return s`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${e.failed?s`<p class="complaint" role="status">Not loaded: ${e.failed}.</p>`:u}
    <div class="choice">
      ${n?s`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>Sp(e)}>Leave it deleted</button>`:s`<button type="button" @click=${()=>Tp(e)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function qt(e){if(e.theirs||!e.set_aside||Oo(e)&&!e.is_taken)return u;let t=()=>{Oo(e)&&to(),Ap(e)};return s`<section class="banner quiet" aria-label="${e.file} was changed">
    <p>
      ${e.file} was changed outside this page, and stands here as it is
      now.${e.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${t}>Change to the other text</button>
      ${e.is_taken?s`<button type="button" @click=${()=>kp(e)}>Close</button>`:u}
    </div>
  </section>`}var Ss={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function jf(e,t){let n=Ii(e);if(!Array.isArray(n)||!n.some(d=>d.id===t))return u;let i=ce("own_fats","/fats").findIndex(d=>d.id===t);if(!(i>=0&&a.beside.own_fats!==void 0))return s`<button type="button" @click=${()=>{yy(e,t)}}>Change this fat of my own</button>`;let l=`/fats/${i}`;return P({of:"own_fats",name:t,pointers:[l],summary:`My own fat, in ${a.beside.own_fats.file}`,body:()=>lt({part:D("own_fats",`${l}/name`)||"Your own fat"},()=>su(l))})}async function yy(e,t){await is(e),qe("own_fats",t);let n=ce("own_fats","/fats").findIndex(o=>o.id===t);K(j(`f-own_fats-fats-${n}-name`))}var vy=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function su(e){let t=(n,o,i,r=!1)=>h({of:"own_fats",label:o,at:`${e}/${n}`,hint:i,optional:r});return s`${H("own_fats",e)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${t("name","Name of the fat")} ${t("source","The document","Supplier, name, date.")}
      ${t("lot","Lot",void 0,!0)}
    </div>
    ${R({of:"own_fats",question:"What it is",at:`${e}/kind`,chosen:D("own_fats",`${e}/kind`)||void 0,answers:vy,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${ky(`${e}/saponification_value`)}
    <div class="row">
      ${t("inci","INCI name")}
      ${t("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${t("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${P({of:"own_fats",name:`${e} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${e}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>xy(e)})}`}function ky(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"?"range":"one",o=(i,r,l=!1)=>h({of:"own_fats",label:r,at:i,number:!0,short:!0,optional:l,unit:"mg KOH/g"});return s`${R({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:e,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(e,"Saponification value"):s`${o(`${e}/low`,"Lowest")} ${o(`${e}/typical`,"Typical",!0)}
            ${o(`${e}/high`,"Highest")}`}
    </div>`}function xy(e){let t=(o,i,r,l)=>{let d=`${e}/${o}`,c=g("own_fats",d)!==void 0,p=()=>E("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:r);return s`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?s`${H("own_fats",d)}${l()}`:u}
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
    ${Ty(`${e}/fatty_acids`)}
    <div class="row">
      ${h({of:"own_fats",label:"Unsaponifiable, at most",at:`${e}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${h({of:"own_fats",label:"Note on the fat",at:`${e}/note`,optional:!0})}
    </div>`}var If=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function Ty(e){let t=Object.keys(g("own_fats",e)??{}),n=If.filter(([l])=>!t.includes(l)),o=l=>If.find(([d])=>d===l)?.[1]??l,i=l=>`${e}/${J(l)}`,r=l=>{let d=Array.isArray(g("own_fats",i(l))),c=(p,m)=>h({of:"own_fats",label:`${o(l)}, ${m}`,at:`${i(l)}/${p}`,unit:"%",short:!0});return s`<div class="row">
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
    ${H("own_fats",e)} ${t.map(r)}
    <div class="row">
      ${ge({label:"Add a fatty acid",of:"own_fats",at:`${e}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:l=>l&&E("own_fats",`${o(l)} added`,i(l),["",""])})}
    </div>`}function Jo(e){let{pieces:t,batches:n,batch_limits:o,around:i,...r}=e,[l]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=l;return{...r,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:l,place:"batches.0",whippings:c?.whippings??[],whole:e}}var Z=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,Ry=e=>e.cut?["loaf","loaves"]:["cast","casts"];function Nt(e,{pieces:t,casts:n}){let o=e.cut?Z(t,"bar"):Z(t,"piece");return n===t?o:`${o} from ${Z(n,...Ry(e))}`}var Sy=e=>e===1?"once":`${e} times`,au=e=>e.batches.length>1,Ce=e=>e.pieces.batches>1;function sn(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}function ue(e){return Ce(e.whole)?`one batch, ${Nt(e.whole,e.batch)}`:""}var Hf=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function lu(e,t){return Hf(e)?`${Nt(e.whole,t)}${t.count>1?`, whipped ${Sy(t.count)}`:""}`:""}function As(e,t){let n=lu(e,t);return n&&`one whipping: ${n}`}var qf=e=>Ce(e.whole)||Hf(e),Ps=(e,t)=>`${Z(e,"filling")} of ${Z(t,"cavity","cavities")}`;var Nf=e=>[...a.files?.runs??[],...a.files?.orders??[],...a.files?.formulas??[]].find(t=>t.file===e)?.name||e;function Ds(e){let t=e?.used_by??[];return t.length?s`<p class="aside">Used by ${sn(t.map(Nf))}.</p>`:u}function Vo(e){let t=e?.used_by??[];return t.length<2?u:s`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${sn(t.map(Nf))}: a change here changes
    ${t.length===2?"both":`all ${t.length}`}.
  </p>`}var Ki={of:"own_fats",at:"/fats",least:1},Os={of:"own_tips",at:"/tips",least:1},ao=({of:e,at:t})=>ce(e,t);function Uf(e){return Jf(e,Ki,"fats",t=>{let n=`/fats/${t}`;return P({of:"own_fats",name:String(ao(Ki)[t].id),pointers:[n],summary:s`<span
        >${D("own_fats",`${n}/name`)||"Without a name"}<small
          >${Ay(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>su(n)})})}function Ay(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(t??"");return o?`${o} mg KOH/g`:"saponification value not given"}function zf(e){return Jf(e,Os,"tips",t=>{let n=`/tips/${t}`;return s`<div class="tip-row">
      ${xf(ao(Os)[t])}
      ${P({of:"own_tips",name:`tip ${t}`,pointers:[n],summary:D("own_tips",`${n}/name`)||"Without a name",body:()=>Rs({of:"own_tips",at:n})})}
    </div>`})}function Jf(e,t,n,o){let i=a.files?.[n].find(({file:l})=>l===e.file),r=l=>String(ao(t)[l].name||`number ${l+1}`);return s`${Ht(e)} ${qt(e)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${e.file}</h2>
      ${Vo(i)}
      ${e.shipped?s`<p class="aside">Built-in: your first change is saved as a copy.</p>`:u}
      <div class="items">
        ${ao(t).map((l,d)=>s`<div class="held" id=${B(t,d)} role="group" aria-label=${r(d)}>
              ${o(d)} ${q(t,d,r(d))}
            </div>`)}
      </div>
    </section>`}var uu=(e,t)=>({...Ss,id:_s(e,t),name:e});function Vf(e){let t=uu(e,[...a.fats,...ao(Ki)]);I(Ki,t,e),qe("own_fats",String(t.id)),K(te("own_fats",`/fats/${ao(Ki).length-1}/source`))}var du=e=>({name:e});function Kf(e){I(Os,du(e),e);let t=ao(Os).length-1;qe("own_tips",`tip ${t}`),K(kt(dt("own_tips",`/tips/${t}`,"own")))}var Qf=(e,t,n)=>{let o=new Map;for(let i=t;i<=n;i++)o.set(e[i],i);return o},Ms=fs(class extends qo{constructor(e){if(super(e),e.type!==en.CHILD)throw Error("repeat() can only be used in text expressions")}dt(e,t,n){let o;n===void 0?n=t:t!==void 0&&(o=t);let i=[],r=[],l=0;for(let d of e)i[l]=o?o(d,l):l,r[l]=n(d,l),l++;return{values:r,keys:i}}render(e,t,n){return this.dt(e,t,n).values}update(e,[t,n,o]){let i=ff(e),{values:r,keys:l}=this.dt(t,n,o);if(!Array.isArray(i))return this.ut=l,r;let d=this.ut??=[],c=[],p,m,_=0,$=i.length-1,y=0,x=r.length-1;for(;_<=$&&y<=x;)if(i[_]===null)_++;else if(i[$]===null)$--;else if(d[_]===l[y])c[y]=kn(i[_],r[y]),_++,y++;else if(d[$]===l[x])c[x]=kn(i[$],r[x]),$--,x--;else if(d[_]===l[x])c[x]=kn(i[_],r[x]),No(e,c[x+1],i[_]),_++,x--;else if(d[$]===l[y])c[y]=kn(i[$],r[y]),No(e,i[_],i[$]),$--,y++;else if(p===void 0&&(p=Qf(l,y,x),m=Qf(d,_,$)),p.has(d[_]))if(p.has(d[$])){let z=m.get(l[y]),ze=z!==void 0?i[z]:null;if(ze===null){let Wn=No(e,i[_]);kn(Wn,r[y]),c[y]=Wn}else c[y]=kn(ze,r[y]),No(e,i[_],ze),i[z]=null;y++}else gs(i[$]),$--;else gs(i[_]),_++;for(;y<=x;){let z=No(e,c[x+1]);kn(z,r[y]),c[y++]=z}for(;_<=$;){let z=i[_++];z!==null&&gs(z)}return this.ut=l,hs(e,c),Se}});async function ie(e){f({list_complaint:""});try{await e()}catch(t){f({list_complaint:t instanceof Error?t.message:String(t)}),t instanceof v&&await rt().catch(()=>{})}}var cu=()=>{ie(cm)},Gf=()=>{ie(pm)};function ct(e){return s`<h1 tabindex="-1">${e}</h1>
    ${a.list_complaint?s`<p class="alarm" role="alert">${a.list_complaint}</p>`:u}
    ${a.list_told&&Li()?s`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${cu}>Undo</button>
          </p>`:u}
    ${(a.files?.cut??[]).map(t=>s`<p class="alarm">
          More lies in ${t.folder} than is looked at: ${t.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Yf=new Map,Zf=Promise.resolve();function Xf(e,t=""){let n=`${e}
${t}`,o=Yf.get(n);return o||(o=Zf.then(()=>Py(e)),Zf=o,Yf.set(n,o)),o}async function Py(e){try{let t=await Pt({kind:"glb",gauge:{file:e}}),n=Bo(await t.arrayBuffer());return Bi(n.find(o=>o.name==="cavity")??n[0])}catch(t){if(t instanceof v)return;throw t}}var pu=class extends HTMLElement{static observedAttributes=["file","changed"];#t;#n=new IntersectionObserver(([t])=>t.isIntersecting&&this.#e(),{rootMargin:"200px"});connectedCallback(){this.#n.observe(this)}disconnectedCallback(){this.#n.disconnect()}attributeChangedCallback(){this.#n.disconnect(),this.isConnected&&this.#n.observe(this)}#e(){this.#n.disconnect();let t=this.getAttribute("file")??"";requestIdleCallback(()=>{Xf(t,this.getAttribute("changed")??"").then(n=>{t===this.getAttribute("file")&&(this.#t=n,this.#i())})},{timeout:1e3})}#i(){let t=this.#t;if(!t)return void ot(u,this);let{left:n,right:o,floor:i,brim:r,loops:l}=t,d=.04*Math.max(o-n,r-i),c=[n-d,-r-d,o-n+2*d,r-i+2*d];ot(s`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${Ei(l)} />
      </svg>`,this)}};customElements.define("mould-picture",pu);var Rt=(e,t)=>s`<ul class="cards">
    ${Ms(e,({file:n})=>n,t)}
  </ul>`;function Ut(e){let{one:t,facts:n,picture:o,open:i}=e,r=a.list_open?.file===t.file?a.list_open:void 0,l=t.name||t.file;return s`<li class="file">
    <button type="button" class="open" @click=${()=>{ie(i)}}>
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
      @click=${()=>Dy(e,!r)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${r?Oy(e,r):u}
  </li>`}function Dy({one:e},t){let{file:n,name:o,note:i}=e;f({list_open:t?{file:n,name:o,note:i,stem:Eo(n)}:void 0})}function Oy(e,t){let{kind:n,one:o}=e,i=s`<button type="button" @click=${()=>{ie(()=>Fy(n,o))}}>Copy</button>`;if(o.shipped)return s`<div class="acts"><div class="choice">${i}</div></div>`;let r=["name","note"].every(c=>o[c]===t[c])&&Eo(o.file)===t.stem,l=n.name==="fats"||n.name==="tips"||t.name.trim()!=="",d=()=>{ie(()=>Cy(e,t))};return s`<div class="acts">
    ${Ds(o)} ${n.called?mu(n.called==="for"?"For":"Name",t,"name"):u}
    ${n.name==="tips"?u:mu("Note",t,"note")} ${mu("Name of the file",t,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${r||!l||!t.stem.trim()} @click=${d}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{ie(()=>eh(o,t,!1))}}>Remove</button>
    </div>
    ${t.used_by?My(o,t):u}
  </div>`}function mu(e,t,n){let o=`list-${n}`,i=r=>b(t,{[n]:r.target.value});return s`<div class="field">
    <label for=${o}>${e}</label>
    <input id=${o} .value=${F(t[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function My(e,t){return s`<div role="alert">
    <p class="alarm">${t.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{ie(()=>eh(e,t,!0))}}>Remove it even so</button>
  </div>`}async function Fy(e,t){let n=await mm(e,t),o=a.files?.[e.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:Eo(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function Cy({kind:e,one:t},{name:n,note:o,stem:i}){await hm(e,t,{name:n.trim(),note:o.trim(),stem:i.trim()}),f({list_open:void 0})}async function eh(e,t,n){let o=e.used_by??[];if(o.length&&!n)return b(t,{used_by:o});try{await gm(e,n),f({list_open:void 0})}catch(i){let r=i instanceof v?i.answer.used_by:void 0;if(!r)throw i;b(t,{used_by:r})}}function Fs(e,t,n){let o=[...a.files?.[e.list]??[]].sort((r,l)=>Number(r.shipped)-Number(l.shipped));return o.length?Rt(o,r=>Ut({kind:e,one:r,facts:Ly(r),open:()=>n(r.file)})):s`<p class="aside">None yet. ${t}</p>`}var th=4;function Ly({holds:e=[],changed:t}){let n=e.length-th,o=n>0?[...e.slice(0,th),`${n} more`]:e;return[o.length?sn(o):"",t?`changed ${Me(t)}`:""].filter(Boolean)}var Qi="";function Cs({label:e,add:t,act:n,tried:o}){let i=()=>{o(async()=>{await n(Qi.trim()),Qi="",N()})},r=l=>{Qi=l.target.value,N()};return s`<div class="row">
    <div class="field">
      <label for="new-held">${e}, by name</label>
      <input id="new-held" .value=${F(Qi)} @input=${r} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!Qi.trim()} @click=${i}>${t}</button>
  </div>`}function pt(e){let t=a.removed.filter(n=>n.kind===e);return t.length?s`<details class="removed">
    <summary>Removed, and kept still: ${t.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${t.map(Ey)}
    </ul>
  </details>`:u}function Ey(e){let t=e.name||e.file,n=`removed ${e.removed}`,o=a.open.has(n);return s`<li>
    <p>
      <b>${t}</b> <small>${e.file}, removed ${Me(e.removed_at)}, kept until ${Me(e.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${t}" @click=${()=>{ie(()=>_m(e))}}>
        Bring back
      </button>
      ${o?s`<button
                type="button"
                aria-label="Delete ${t} for good"
                @click=${()=>{ie(()=>$m(e))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>Ee("open",n)}>Keep it</button>`:s`<button type="button" aria-label="Delete ${t} ..." @click=${()=>Ee("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function oh(){let e=$n();return s`${ct("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${Fs(Ot,"Each file is named by the formulas that use its fats.",t=>Ci(Ot,t))}
      ${e?Uf(e):u}
      ${Cs({label:"A new fat of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(Vf(t)):rs(Ot,uu(t,a.fats)),tried:ie})}
    </section>
    ${By()} ${pt("fats")}`}var nh="fats that are listed";function By(){let e=a.finding?.key===nh?a.finding.text:"",t=a.fats.filter(n=>tn(n,e)!==void 0);return s`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${F(e)}
          @input=${n=>f({finding:{key:nh,text:n.target.value}})}
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
          ${t.map(n=>Wy(n,e))}
        </tbody>
      </table>
    </div>
    ${t.length?u:s`<p class="hint">None is called so.</p>`}
  </section>`}function Wy(e,t){let{low:n,high:o,typical:i}=e.saponification_value_mg_koh_per_g,r=tn(e,t),l=d=>T(d,1);return s`<tr>
    <th scope="row">${e.name}${r&&r!==e.name?s` <small>${r}</small>`:u}</th>
    <td>${l(i)} <small>${l(n)} to ${l(o)}</small></td>
    <td>${e.inci}</td>
  </tr>`}var ih=e=>e.goes_into==="lye",rh=({role:e})=>e==="alkali",Iy=e=>rh(e)?"down":"nearest",lo=(e,t)=>le(e,t,Iy(t));function Ls(e){let t=e.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>ih(i)),n=({one:i})=>i.role==="water",o=({one:i})=>rh(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function sh(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!ih(t))}function fu(e){let t=D(e,"/measured_density");return s`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${h({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${h({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${h({label:"Unmould after",of:e,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${h({label:"Cut within",of:e,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${Ny(e)}
    ${P({of:e,name:"density",pointers:["/measured_density"],summary:`Measured density${t&&`: ${t}`}`,body:()=>h({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var jy=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],ah={after:"",mass:""},lh=3,Hy={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:lh},()=>ah)}}};function qy(e){return g(e,"/drying/weighings")!==void 0?"weighed":g(e,"/drying")!==void 0?"law":g(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function Ny(e){let t=qy(e);return s`${R({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:jy,puts:o=>({...ae(e,"",["drying","water_lost_in_cure"]),...Hy[o]})})}
  ${t==="share"?s`<div class="row">
          ${h({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${t==="law"?s`<div class="row">
          ${h({label:"Of the batter's water, gone in the end",of:e,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${h({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${t==="weighed"?Uy(e):u}`}function Uy(e){let t={of:e,at:"/drying/weighings",least:lh};return s`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${k(t).map((n,o)=>s`<div class="row named" id=${B(t,o)}>
          ${h({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${h({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${q(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${Q(t,"One more weighing",()=>I(t,ah,"weighing"))}`}var zy=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Es=e=>bn(e).map(t=>[t.id,t.name]),uh=["unsaid","Not given"],dh=["none","Holds none"],ch=e=>e===void 0?"unsaid":e==="none"?"none":"some",Jy=e=>t=>t==="some"?e:t==="none"?"none":void 0;function ph(e,t){return hu(e,`${t}/contains_fat`,[uh,dh,["some","Holds fat"]],Es(e))}function hu(e,t,n,o){let i=ch(g(e,t)),r=n.some(([l])=>l===i)?i:void 0;return s`${R({of:e,question:"Fat in it",at:t,chosen:r,answers:n,puts:Jy({fat:"",share:""})})}
  ${i==="some"?s`<div class="row">
          ${ge({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${h({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:u}`}var Vy=[uh,dh,["some","Holds acid"],["typed","By what it takes up"]],Ky={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function gu(e,t){let n=`${t}/contains_acid`,o=g(e,`${n}/takes_up`)!==void 0?"typed":ch(g(e,n));return s`${R({of:e,question:"Acid in it",at:n,chosen:o,answers:Vy,puts:i=>Ky[i]})}
  ${o==="some"?s`<div class="row">
          ${ge({label:"Which acid",of:e,at:`${n}/acid`,answers:zy.map(i=>[i,i]),unsaid:"choose ..."})}
          ${h({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?s`<div class="row">
          ${h({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?_u(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function _u(e,t,n){let o=g(e,t)===!0?"yes":"no";return R({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var Qy=["tsp/lb","tbsp/lb","tsp/kg"],Bs=["%","g/kg",...Qy].flatMap(e=>[`${e} of fats`,`${e} of batter`]),fh=[...Bs,"% of finished soap","g/kg of finished soap"];function mh(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function Ws(e,t,n,o,i=!1){let r=ee(e,t),[l,d]=mh(D(e,t),o),c=a.typed?.key===r?a.typed.text:l;!i&&!(l.trim()&&d)&&Ge(e,t,r,l.trim()?`${n}: of what`:n);let m=He(e,t),_=(y,x)=>{let z=`${y.trim()} ${x}`.trim();V(e,t,i&&!y.trim()?void 0:z),N()},$=y=>{let x=y.target.value,[z,ze]=mh(x,o);f({typed:{key:r,text:x}}),_(z,ze||d)};return s`<div class="field rate ${m?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${F(c)}
        @input=${$}
        @blur=${eu}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${r}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${y=>_(c,y.target.value)}
      >
        <option value="" .selected=${F(d==="")}>of what?</option>
        ${o.map(y=>s`<option value=${y} .selected=${F(y===d)}>${y}</option>`)}
      </select>
    </div>
    ${xe(r,m)}
  </div>`}function Gy(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var Yy=.01+1e-9;function Is(e,t){let{sum:n,unread:o}=Gy(t),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=Yy?`${e} add to ${i(n)}.`:r>0?`${e} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-r)} too much.`}var hh=(e,t)=>bn(e).find(n=>n.id===t)?.name??t,Gi=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),js=e=>k(Gi(e));function bu(e){let t=js(e),n=a.picking?.of===e&&a.picking.row===t.length;return s`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>Zy(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?Is("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${t.length?u:Ge(e,"/fats",ee(e,"/fats"),"The fats")}
    ${n?_h(e):Q(Gi(e),"Add a fat",()=>gh(e,t.length))} ${sv(e)}
  </section>`}function Zy(e,t,n){let o=`/fats/${t}`,i=hh(e,String(n[t].fat??""))||"Which fat?",r=Fe(e,`${o}/fat`)??Fe(e,o),l=a.picking?.of===e&&a.picking.row===t;return s`<li class="formula-row" id=${B(Gi(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${ee(e,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?$u():gh(e,t)}
      >
        ${i}
      </button>
      ${h({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${q(Gi(e),t,i)}
    </div>
    ${r?s`<p class="complaint">${r}</p>`:u} ${l?_h(e):u}
    ${jf(e,String(n[t].fat??""))}
    ${P({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${tv(n[t])}`,body:()=>iv(e,t)})}
  </li>`}function gh(e,t){f({picking:{of:e,row:t,text:""}}),K(j("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function $u(){let e=a.picking;f({picking:void 0}),e&&K(te(e.of,e.row<js(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function wu(e,t){let{row:n}=a.picking,o=js(e);f({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};Vi(Gi(e),`${hh(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],te(e,`/fats/${n}/share`))}function _h(e){let{row:t,text:n}=a.picking,o=js(e).map(m=>m.fat),i=Xy(e,n),r=i.filter(m=>!o.includes(m.id)||o[t]===m.id),l=r.find(m=>m.id===a.picking.lit),d=m=>{f({picking:{of:e,row:t,text:m.target.value}})},c=m=>{let _=l?r.indexOf(l)+m:m>0?0:r.length-1,$=r[(_+r.length)%r.length];$&&(f({picking:{of:e,row:t,text:n,lit:$.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${$.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&$u(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let _=r.find(y=>Be(y.name)===Be(n.trim())),$=l??(r.length===1?r[0]:_);m.key==="Enter"&&$&&wu(e,$.id)};return s`<div class="picker" role="group" aria-label="Which fat?">
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
      <button type="button" @click=${$u}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[t]!==m.id,$=tn(m,n);return s`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===l?"lit":""}
          ?disabled=${_}
          aria-selected=${m===l||o[t]===m.id?"true":"false"}
          @click=${()=>wu(e,m.id)}
        >
          ${m.name}${$===m.name||!$?"":`, ${$}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{ev(e,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function Xy(e,t){let n=bn(e).filter(l=>tn(l,t)!==void 0),o=t.split(/\s+/).filter(l=>l.length>2);if(n.length||o.length<2)return n;let i=l=>o.filter(d=>tn(l,d)!==void 0).length,r=Math.max(...bn(e).map(i));return r?bn(e).filter(l=>i(l)===r):[]}async function ev(e,t){if(!await is(e))return;let o=t.trim(),i=_s(o,[...a.fats,...ce("own_fats","/fats")]),r=ce("own_fats","/fats").length;V("own_fats",`/fats/${r}`,{...Ss,id:i,name:o}),wu(e,i),qe("own_fats",i),K(te("own_fats",`/fats/${r}/${o?"inci":"name"}`))}function tv(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be filled in":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var nv=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],ov={published:void 0,one:"",range:{low:"",typical:"",high:""}};function iv(e,t){let n=`/fats/${t}/saponification_value`,o=g(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=g(e,`/fats/${t}/confirmed`)!==void 0,l=(d,c)=>h({label:d,of:e,at:c,number:!0,short:!0});return s` ${h({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${R({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:nv,puts:d=>ov[d],hint:rv(e,D(e,`/fats/${t}/fat`))})}
  ${i==="one"?s`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?s`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||r?_u(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function rv(e,t){let n=bn(e).find(l=>l.id===t);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:r}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${r}).`}function sv(e){let t=Ii(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=D(e,"/own_fats");return P({of:e,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>h({label:"Its name, as it lies beside this formula",of:e,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var av=e=>de.includes(e);function Hs(){let e=a.complaint;return!e?.field||e.lye_heavy?!1:Uo().some(({of:t,at:n})=>ut(t)&&(n===e.field||n.startsWith(`${e.field}/`)))}function Yi(){let e=a.complaint?Uo():[];return e.length?s`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${e.length}</p>
    <ul class="choice">
      ${e.map(t=>s`<li>
            <button type="button" @click=${()=>lv(t)}>
              ${t.part?s`<small>${t.part}</small> `:u}${t.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function lv({of:e,id:t,folds:n}){for(let o of n)se(o);f({has_asked:!0}),av(e)?(a.view!=="formula"||a.formula_of!==e)&&st(e):a.view!=="set-up"&&!(e==="own_fats"&&a.view==="formula")&&f({view:"set-up"}),requestAnimationFrame(()=>K(j(t)))}var $h="danger-of-superfat";function yu(e,t){return s`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${h({label:"Superfat (share of all fat left unsaponified)",of:e,at:"/superfat",unit:"%",term:"superfat",described_by:vn(e).length?$h:void 0})}
    </div>
    ${zi(e,$h)} ${uv(e)} ${hv(e,t)}
  </section>`}function uv(e){let t=ce(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return s`${R({of:e,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>dv(t,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${t.map((i,r)=>cv(e,i,r,t.length>1))}
  ${t.length>1?s`<p class="total" role="status">
          ${Is("The two",t.map(i=>i.share))}
        </p>`:u}`}function dv(e,t){let n=(o,i)=>({purity:"",...e.find(r=>r.alkali===o),alkali:o,share:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function cv(e,t,n,o){let i=`/alkali/${n}`,r=String(t.alkali??""),l=Fe(e,i)??Fe(e,`${i}/alkali`);return s`<div class="formula-row">
    ${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||t.share!=="100 %"?h({label:`${r}: share of the fats it saponifies`,of:e,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${h({label:`${r}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${P({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${pv(t.purity_range)}`,body:()=>mv(e,i)})}
  </div>`}var pv=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function mv(e,t){let n=`${t}/purity_range`,o=g(e,n)!==void 0;return s`${R({of:e,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?s`<div class="row">
          ${h({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${h({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var fv={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function hv(e,t){let n=Object.keys(g(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(fv);return s`${R({of:e,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:_v(t)})}
    <div class="row">${n.map(r=>gv(e,r))}</div>`}function gv(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?h({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?h({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):h({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function _v(e){if(!(!e||a.is_old))return`It now makes a strength of ${T(e.lye_strength_percent,1)} %; ${T(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${T(e.water_percent_of_fats,1)} % of the fats.`}function Sn(e,t,n){let o=$v(e,t);return P({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>s`${bv(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${wh(e,`${t}/allergens`,"Allergen","Add an allergen",(i,r)=>yv(e,i,r))}
        ${h({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function $v(e,t){let n=ce(e,`${t}/allergens`).length;return[g(e,`${t}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var vu={name:"",share:""},wv={unsaid:void 0,one:"",many:[vu]};function bv(e,t,n){let o=g(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=l=>l==="many"&&o?[{...vu,name:o}]:wv[l];return s`${R({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?h({label:"INCI name",of:e,at:t}):u}
  ${i==="many"?s`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${wh(e,t,"INCI name","One more INCI name")}`:u}`}function yv(e,t,n){return R({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:g(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function wh(e,t,n,o,i){let r={of:e,at:t};return s`${k(r).map((l,d)=>s`<div class="row named" id=${B(r,d)}>
        ${h({label:`${n} ${d+1}`,of:e,at:`${t}/${d}/name`})}
        ${h({label:`Share ${d+1}`,of:e,at:`${t}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${d}`,d)??u} ${q(r,d,String(l.name||`${n} ${d+1}`))}
      </div>`)}
  ${Q(r,o,()=>I(r,vu,n))}`}var vv=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:Fv},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:Sv},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:Av},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:Pv}];function ku(e){return vv.map(t=>{let n={of:e,at:`/${t.list}`},o=k(n),i=(r,l)=>s`<li class="formula-row" id=${B(n,l)}>
        ${xv(e,t,n,r,l)} ${t.row(e,`${n.at}/${l}`,r)}
      </li>`;return s`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?s`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:s`<p class="aside">${t.aside}</p>`}
      ${Q(n,t.add,()=>I(n,kv(t),t.add.replace("Add ","")))}
    </section>`})}function kv(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function xv(e,t,n,o,i){let r=`/${t.list}/${i}`,l=Fe(e,r),d=String(o.name||`number ${i+1} of the ${t.list}`);return s`${l?s`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${h({label:"Name",of:e,at:`${r}/name`})}
      ${t.list==="liquids"?u:Ws(e,`${r}/rate`,"How much",Bs)}
      ${q(n,i,d)}
    </div>`}function bh(e,t,n,o){let i=`${t}/goes_into`,r=g(e,i);return R({of:e,question:"Goes into",at:i,chosen:r||void 0,answers:n,puts:p=>p,hint:o||r?void 0:"The batter, unless you name another place.",optional:!o})}function yh(e,t,n){let o=g(e,`${t}/stirred_in`);return s`${bh(e,t,Rv,n)}
  ${g(e,`${t}/goes_into`)==="lye"||o!==void 0?R({of:e,question:"Stirred into the lye",at:`${t}/stirred_in`,chosen:String(o??""),answers:Tv,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var Tv=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],Rv=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function xu(e,t,n){let o=(l,d,c)=>l?`${d}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(l=>`${t}/${l}`);return P({of:e,name:`${t} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>s` <div class="row">
          ${h({label:"Bulk density (for spoons)",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${h({label:"True density (in the batter)",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${Ws(e,`${t}/limit`,"The most that the supplier's document allows",fh,!0)}`})}function Tu(e,t,n,o){let i=(l,d)=>l===void 0?"":l==="none"?`no ${d}`:d,r=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return P({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>s`${ph(e,t)} ${o?gu(e,t):u}`})}var qs=(e,t,n)=>Sn(e,t,String(n.name||"it"));function Sv(e,t,n){return s`${yh(e,t,!0)}
    <div class="folds">${Tu(e,t,n,!0)} ${xu(e,t,n)} ${qs(e,t,n)}</div>`}function vh(e,t,n){return P({of:e,name:`${t} place`,pointers:[`${t}/goes_into`,`${t}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>yh(e,t,!1)})}function Av(e,t,n){return s`<div class="folds">
    ${xu(e,t,n)} ${qs(e,t,n)} ${vh(e,t,n)} ${Tu(e,t,n,!1)}
  </div>`}function Pv(e,t,n){return s`${Ov(e,t)}
    <div class="folds">
      ${xu(e,t,n)} ${qs(e,t,n)} ${vh(e,t,n)} ${Tu(e,t,n,!0)}
    </div>`}var Dv=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function Ov(e,t){let n=`${t}/dispersed_in`,o=g(e,n)!==void 0,i=g(e,`${n}/from`);return s`${R({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?s`<div class="row">
            ${ge({label:"Which oil",of:e,at:`${n}/fat`,answers:Es(e),unsaid:"choose ..."})}
            ${h({label:"Oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${R({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:Dv,puts:l=>l,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var Mv=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function Fv(e,t,n){let o=(i,r,l)=>P({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:r,body:l});return s`${Lv(e,t,n)}
    ${bh(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${Bv(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>Cv(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>gu(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>h({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${qs(e,t,n)}
    </div>`}function Cv(e,t){let n=g(e,t)===!0?"ice":"liquid";return R({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function Lv(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({...ae(e,t,["replaces","rate"]),[r]:""});return s`${R({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:Ev,puts:i})}
  ${o==="replaces"?s`<div class="row">
          ${h({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?Ws(e,`${t}/rate`,"Rate",Bs):u}`}var Ev=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function Bv(e,t){let n=`${t}/composition`,o=typeof g(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(d,c)=>h({label:d,of:e,at:`${n}/${c}`,unit:"%",short:!0});return s`${R({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?s`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${hu(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Es(e)])}
          <div class="row">
            ${h({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:s`<div class="row">
          ${ge({label:"Built-in figures of",of:e,at:n,answers:Mv.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var pe=()=>a.beside.studio!==void 0,Zi=({run:e})=>g("run",e),Ru=({studio:e})=>g("studio",e);function Xi(e){return Zi(e)===void 0&&pe()?{of:"studio",at:e.studio}:{of:"run",at:e.run}}var zt=e=>Zi(e)??Ru(e),Te=(e,t)=>h({...t,...Xi(e)}),Su=e=>e===void 0||e===""||e!==null&&typeof e=="object"&&!Object.keys(e).length;function er(e,t=""){return e===void 0||Su(e)?[]:e===null||typeof e!="object"||Array.isArray(e)?[[t,e]]:Object.entries(e).flatMap(([n,o])=>er(o,`${t}/${J(n)}`))}function tr(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/")))w(e,n)!==void 0&&Su(w(e,n))&&(e=A(e,n,void 0));return e}var nr=(e,t)=>t.reduce((n,o)=>tr(A(n,o,void 0),o),e);function xh(e){let t=new Map;return e.flatMap(n=>er(Zi(n)).flatMap(([o,i])=>{let r=n.studio+o,l=t.get(r)??g("studio",r);return Su(l)||String(l).startsWith("?")||l===i?(t.set(r,i),[[n.run+o,r,i]]):[]}))}async function Au(e){pe()||await lm();let t=xh(e);gn([["studio",n=>t.reduce((o,[,i,r])=>A(o,i,r),n)],["run",n=>nr(n,t.map(([o])=>o))]]),W("Kept in the studio")}function Wv(e){let t=e.flatMap(o=>er(Ru(o)).map(([i,r])=>[o.run+i,r]));gn([["run",o=>t.reduce((i,[r,l])=>w(i,r)===void 0?A(i,r,l):i,o)]]),W("Said in this run only")}function Iv(e){let t=e.flatMap(n=>er(Zi(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));gn([["run",n=>nr(n,t)]]),W("Taken from the studio again")}var kh=e=>er(e).length>0;function An(e,t){if(!pe())return u;let n=t.some(r=>kh(Zi(r))),o=t.some(r=>kh(Ru(r))),i=(r,l)=>s`<button type="button" aria-label="${e}: ${r}" @click=${l}>${r}</button>`;return s`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&xh(t).length?i("Keep in my studio",()=>{Au(t)}):u}
    ${n&&o?i("As in the studio",()=>Iv(t)):u}
    ${!n&&o?i("Otherwise in this run",()=>Wv(t)):u}
  </span>`}function Pu(e){let t=Object.keys(g("studio","/moulds_owned")??{}),n=a.files?.moulds;return t.find(o=>je(o,n)===je(e,n))??e}var or=()=>Object.keys(g("studio","/cups")??{}),ir=()=>or().length===1?{net:""}:or().length?{cup:"",net:""}:{holds:"",net:""},Th="\0another";function rr(e,t="Cup holds"){let n=`${e}/holds`,o=or();if(g("run",n)!==void 0||!o.length)return s`${h({label:t,at:n,unit:"ml",short:!0})}${o.length?jv(e):u}`;let i=l=>l===Th?E("run","Another cup",e,{...Du(e),holds:""},te("run",n)):E("run",`Cup: ${l}`,e,{...Du(e),cup:l}),r=l=>D("studio",`/cups/${J(l)}`);return ge({label:"Which cup",at:`${e}/cup`,answers:[...o.map(l=>[l,`${l}, ${r(l)}`]),[Th,"Another cup"]],unsaid:"choose ...",chosen:D("run",`${e}/cup`)||(o.length===1?o[0]:""),take:i})}function Du(e){let{cup:t,holds:n,...o}=g("run",e)??{};return o}var jv=e=>s`<button type="button" @click=${()=>E("run","A cup of the studio",e,Du(e))}>
    A cup of my studio
  </button>`;function Sh(){return pe()?s`<div class="row">
    ${or().map(e=>h({of:"studio",label:`${e} holds`,at:`/cups/${J(e)}`,unit:"ml",short:!0,optional:!0}))}
    ${Hv()}
  </div>`:s`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function Hv(){let e=()=>{let t=document.getElementById("new-cup"),n=t.value.trim()||Rh();t.value="",E("studio",`${n} added`,`/cups/${J(n)}`,"",te("studio",`/cups/${J(n)}`))};return s`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${Rh()} />
    </div>
    <button type="button" @click=${e}>Add the cup</button>`}function Rh(){for(let e=1;;++e){let t=e===1?"weigh-cup":`weigh-cup ${e}`;if(!or().includes(t))return t}}var qv=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]),Ou=e=>({run:`/${e}/temperatures`,studio:`/temperatures/${e}`});function Ns(e){let{run:t}=Ou(e);return P({name:t,pointers:[t],summary:"How warm",body:()=>s` <p class="hint">
          ${pe()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${An("How warm",[Ou(e)])} ${H("run",t)} ${Nv(e)}`})}function Nv(e){let{run:t,studio:n}=Ou(e),o=d=>({run:`${t}/${d}`,studio:`${n}/${d}`}),i=a.units==="us"?"\xB0F":"\xB0C",r=(d,c,p=i)=>Te(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),l=o("cooled_in");return s`<div class="row">
    ${r("room_at","Room and dry alkali")} ${r("water_at","Water")}
    ${r("ice_share","Of the water, as ice","%")} ${r("lye_used_at","Lye when it is used")}
    ${r("fats_at","Fats")} ${r("batter_below","Batter must stay below")}
    ${ge({label:"The lye cools in",...Xi(l),answers:qv,unsaid:"not given",optional:!0})}
  </div>`}var Ye=()=>w(a.run.now,"/pipe")!==void 0;function Ah(){let e=t=>{let n=A(t,"/pipe",{formula:"",fills_headspace:"",whip:ir()});return pe()?n:A(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};se("set-up pipe"),on("run","Topping added",e,j("lane-pipe"))}function Uv(e){let t=Object.keys(w(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",w(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>w(o,i)===void 0?o:A(o,i,void 0),e)}function zv(){on("run","Topping removed",Uv,j("topping-back"))}function Ph(){let e=a.past.at(-1)?.run?.now;return!e||w(e,"/pipe")===void 0||Ye()?u:s`<button type="button" id="topping-back" @click=${Fi}>Bring the topping back</button>`}function Mu(){return s`${Zv()} ${Ns("pipe")}
    <p class="choice"><button type="button" @click=${zv}>Take the topping away</button></p>`}var Jv=["trials","beads","envelope"];function Fu(e){return Jv.every(t=>g("run",`/pipe/${t}`)===void 0)&&Ge("run","/pipe",`${ee("run","/pipe/trials")}-add`,"How large the topping is"),s`<h3>How large is the topping?</h3>
    ${H("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${xt({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:ir()},body:Vv})}
      ${xt({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:Kv})}
    </div>
    ${xt({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:Ef,body:()=>Bf(e)})}
    ${e?Gv(e):u}`}function Vv(){let e={at:"/pipe/trials/weighed",least:1};return s`<div class="trials">
      ${k(e).map((t,n)=>s`<div class="row" id=${B(e,n)}>
            ${h({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${q(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${Q(e,"One more trial",()=>I(e,"","trial"))}
    <div class="row">
      ${h({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${rr("/pipe/trials/weigh_cup")}
    </div>
    ${H("run","/pipe/trials/weigh_cup")}`}function Kv(){let e="/pipe/envelope",t=g("run",`${e}/form`);return s`${R({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${h({label:"Diameter",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${h({label:"Height",at:`${e}/height`,unit:"mm",short:!0})}
      ${h({label:"Share that is soap, not air",at:`${e}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var Qv={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function Gv(e){let t=e.visible_by;if(!t)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return s`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},l)=>O({key:`pipe.by.${i}`,label:Qv[i],note:o(l),shown:ke(a.units,r),of:`pipe.visible_by.${i}_ml`}))}
    ${Yv(e)}`}function Yv(e){let t=e.visible_by?.suggested_correction;if(!t||a.is_old)return u;let n=T(t.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",r=i&&w(a.run.now,`${o}/correction`)!==t.correction,l=()=>E("run","correction kept",o,{correction:t.correction,trials:t.trials});return s`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?s`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function Cu(e){return s`<h3>The whip planned for</h3>
    <div class="row">
      ${h({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${rr("/pipe/whip")}
    </div>
    ${H("run","/pipe/whip")}
    ${e?.loads?s`<p class="aside of-plan">${e.loads} bag loads.</p>`:u}`}function Zv(){let e="/pipe/pace",t=(n,o,i,r=!1)=>h({label:n,at:`${e}/${o}`,unit:i,optional:r,short:!0});return P({name:"pace",pointers:[e],summary:"Piping speed",body:()=>xt({at:e,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>s`<div class="row">
            ${t("Can be piped for","open_time","min")} ${t("To pipe one","time_per_piece","s")}
            ${t("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function Xv(e,{at:t,figure:n}){let o=w(e,t),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function sr(e,t,n){return t?s`<button type="button" @click=${()=>n(t.at,Xv(e,t))}>It is really so: keep it</button>`:u}var Eu=500,ek=()=>w(a.run.now,"/cut")===void 0&&tk()>=Eu,tk=()=>a.plan?.pour.brimful_ml??a.measured?.gauge.pockets[0]?.brimful_ml??0,Us={run:"/cut/kerf",studio:"/kerf"};function Dh(e){se("set-up cut"),E("run","Cut","/cut",{bar:Lu[e],...pe()?{}:{kerf:""}},te("run",`/cut/bar/${Object.keys(Lu[e])[0]}`))}function nk(){E("run","Left whole","/cut",void 0,j("cut-into-bars"))}function Oh(){return ek()?s`<button type="button" id="cut-into-bars" @click=${()=>Dh("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>Dh("slab")}>Cut it into bars</button>`:u}var Lu={loaf:{thickness:""},slab:{length:"",width:""}};function ok(){let e=g("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var ik={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function Mh(){let e=ok(),t=(o,i)=>h({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=D("run","/cut/along");return s` ${R({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>Lu[o]})}
    <div class="row">
      ${e==="loaf"?h({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${e==="slab"?["length","width"].map(o=>h({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${Te(Us,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${An("Kerf",[Us])}</p>
    ${e?R({question:e==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:ik[e],puts:o=>o||void 0}):u}
    <button type="button" @click=${nk}>Leave it whole</button>`}var zs=e=>/^\s*0*[1-9]\d{0,8}\s*$/.test(e)?Number(e):void 0;function Js(e,t,n){return s`<div class="field short">
    <label for=${e} data-said="required">Pieces to sell</label>
    <input
      id=${e}
      aria-required="true"
      .value=${F(t)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}function rk({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,m])=>m),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-e.brim-2*n+i,d=l-r-n,c=[e.left-n,d,e.right-e.left+2*n,-e.floor+n-d],p=(m,_)=>M`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return s`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",Ei(t,l))}${p("side",Ei(e.loops))}
    </svg>
  </div>`}function Ko(e,t=!1,n=[]){let o=n.length?s`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!e)return s`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,r=i.pockets[0];return s`${rk(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${S(ke(a.units,r.brimful_ml))}</b>${i.pockets.length>1?s` in each of ${i.pockets.length}, ${S(ke(a.units,i.total_ml))} together`:u},
      ${S(ye(a.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?s`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${S(ke(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?s`<ul class="limits">
            ${i.notes.map(l=>s`<li>${l.text}</li>`)}
          </ul>`:u}`}var sk={mm:"in",g:"oz","\xB0C":"\xB0F"},ak={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function Vs(e,t,n=""){let o=Bu(e);if(o)return o.unit??"";let i=Bt(w(L(),e));return ak[t]?.test(i)?i:n||(a.units==="us"?sk[t]??t:t)}var Ks=()=>f({typed:void 0}),Qo=e=>`d${e.replaceAll("/","-")}`,Bu=e=>a.typed?.key===Qo(e)?a.typed:void 0,Qs=e=>Bu(e)?.text??String(w(L(),e)??"");function Pn(e){let{complaint:t}=Y();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function Wu(e,t,n,o){let{pointer:i}=e,r=l=>{let d=l.target.value,c=e.unit?Vs(i,e.unit,e.unit_before):"";f({typed:{key:Qo(i),text:d,unit:c}}),we(i,lk(e,d,c))};return s`<input
    id=${Qo(i)}
    .value=${F(Qs(i))}
    @input=${r}
    @blur=${Ks}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${t??u}
    aria-invalid=${Pn(i)?"true":"false"}
  />`}function lk(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&Wt(t)?`${t.trim()} ${n}`:t}function Ze(e,t){let n=Qo(e.pointer),o=Pn(e.pointer),i=uk(e.pointer)??e.hint,r=e.unit?` (${Vs(e.pointer,e.unit,e.unit_before)})`:"";return s`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${r}</label> ${Wu(e,o||i?`${n}-said`:void 0,t)}
    ${xe(n,o,i)}
  </div>`}function uk(e){let t=w(L(),e),n=Bu(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function Gs(e){let t=e.toLowerCase(),{file:n,shipped:o}=Y().open,i=o?"":n;return a.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===t)?.file}async function ar(e){let{open:t}=Y();try{if(await Ft(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await Sr()})}catch(n){if(!(n instanceof v))throw n;return Jl(n)}a.run.file&&(wt(),re()),e(t.file)}var an="/shape/points",Fh=500,Dn=(e,t)=>[an,e,...t?[t]:[]].join("/"),Ch=e=>Array.from({length:e.least},()=>({}));function Lh(e){let t=Je(L(),an),n=ck(),{complaint:o}=Y(),i=o?.field===an&&!o.about?o.line:void 0;return s`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(r=>s`<span
              >${r.label} (${Vs(Dn(-1,r.name),r.unit,Eh(e,t.length,r.name))})</span
            >`)}
      </div>
      ${t.map((r,l)=>dk(e,l,n))}
    </div>
    ${i?s`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${t.length>=Fh} @click=${()=>Zs(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function dk(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=pk(t),r=l=>{let{name:d,label:c,unit:p}=e.columns[l],m={label:c,pointer:Dn(t,d),unit:p,unit_before:Eh(e,t,d)},_=`${c}, ${n.has(t)?o:`point ${t+1}`}`;return Wu(m,i?`point-${t}-said`:void 0,mk(e,t,l),_)};return s`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>Zs(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>Bh(e,t)}>×</button>
    ${i?s`<p id="point-${t}-said" class="complaint">${i}</p>`:u}
  </div>`}function ck(){let e=[...ki(L()),...jr(L())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function pk(e){let{complaint:t}=Y();return Pn(Dn(e))??(t?.about===Dn(e)?t.line:void 0)}function Eh(e,t,n){let o=(i,r)=>Bt(w(L(),Dn(i,r)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function Ys(e,t){queueMicrotask(()=>document.getElementById(Qo(Dn(e,t)))?.focus())}function Zs(e,t){let n=[...Je(L(),an)];n.length>=Fh||(n.splice(t,0,{}),Ks(),we(an,n),Ys(t,e.columns[0].name))}function Bh(e,t,n=0){let o=Je(L(),an).filter((i,r)=>r!==t);Ks(),we(an,o.length?o:[{}]),Ys(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function mk(e,t,n){let[o,i]=e.columns.map(({name:r})=>r);return r=>{let l=!Qs(Dn(t,o))&&!Qs(Dn(t,i));if(r.key==="Enter"&&r.shiftKey)Zs(e,t+1);else if(r.key==="Enter"&&n===0)Ys(t,i);else if(r.key==="Enter"&&t+1<Je(L(),an).length)Ys(t+1,o);else if(r.key==="Enter")Zs(e,t+1);else if(r.key==="Backspace"&&l&&Je(L(),an).length>1)Bh(e,t,t>0?1:0);else return;r.preventDefault()}}var Iu={weighings:[""]},ju=/\.(3mf|gltf|glb)$/i;function Xs(e){let t=cn(e);return t?{kind:e,points:Ch(t)}:{kind:e}}var fk=()=>we("/water",Iu),Jt=e=>ht(L(),e),lr=()=>vi(L());function Wh(e){let{open:t,answer:n,is_old:o}=Y();return s`${Ht(t,()=>{ar(e)})} ${qt(t)}
    ${t.shipped?u:Vo(a.files?.moulds.find(i=>i.file===t.file))}
    ${Jt("shape")&&Jt("mesh")?s`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${Jt("shape")?oe("Shape",lr(),Object.entries(ip),hk):u}
    <div class="beside ${cn(lr())?"rows":""}">
      <div>
        ${Hu()} ${Jt("shape")?_k():u} ${Jt("mesh")?$k():u}
        ${qu()} ${Jt("water")?bk():u} ${vk()}
      </div>
      <div class="stays">${Ko(n,o,jh())} ${kk(e)}</div>
    </div>`}function hk(e){let t={...Y().shapes,[lr()]:L().shape};b(Y(),{shapes:t,answer:void 0}),we("/shape",t[e]??Xs(e))}function gk(){let{shipped:e,file:t}=Y().open;return e?a.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function Hu(){let e=gk();return Ze({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function _k(){let e=lr(),t=cn(e);return s`${$o(e).length?s`<div class="row">
          ${$o(e).map(n=>Ze({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${t?Lh(t):u}`}function qu(e=Ga(L())){return s`<div class="row">
      ${e?u:Ze({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${Ze({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${Ze({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${Ze({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var Nu=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],Uu=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function $k(){let e=o=>String(w(L(),`/mesh/${o}`)??""),t=(o,i,r)=>{let l=Pn(`/mesh/${i}`);return s`<h4>${o}</h4>
      ${oe(o,e(i),r,d=>we(`/mesh/${i}`,d||void 0))}
      ${l?s`<p class="complaint">${l}</p>`:u}`},n=Pn("/mesh/file");return s`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?s`<p class="complaint">${n}</p>`:u}
    ${ju.test(e("file"))&&!e("unit")?u:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",Nu)} ${t("Which way is up","up",Uu)}
    ${e("role")==="body"?wk():u}
    <div class="row">
      ${Ze({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${Ze({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function wk(){let e=w(L(),"/mesh/on_board")===!0?"yes":"no";return s`<h4>Open below, and stood on a board?</h4>
    ${oe("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>we("/mesh/on_board",t==="yes"?!0:void 0))}`}function bk(){let e=w(L(),"/water/filled_to"),t=e===void 0?void 0:e==="brim"?"brim":w(e,"/depth")!==void 0?"depth":"below_brim",n=r=>we("/water/filled_to",r==="brim"?"brim":{[r]:""}),o=w(L(),"/water/weighed_in"),i=t===void 0||t==="brim"?Pn("/water/filled_to"):void 0;return s`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${Ze({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${oe("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?s`<p class="complaint">${i}</p>`:u}
    ${t==="depth"?Ze({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${t==="below_brim"?Ze({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${oe("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>we("/water/weighed_in",r))}
    <div class="row">
      ${Je(L(),"/water/weighings").map((r,l)=>Ze({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},yk(l)))}
    </div>
    ${Y().complaint?.field==="/water/weighings"?s`<p class="complaint">${Y().complaint.line}</p>`:u}
    <button type="button" @click=${Ih}>One more round</button>`}function Ih(){let e=Je(L(),"/water/weighings").length;we(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var yk=e=>t=>{t.key==="Enter"&&(e+1===Je(L(),"/water/weighings").length?Ih():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function vk(){let e=(t,n)=>s`<button type="button" @click=${n}>${t}</button>`;return s`<div class="choice">
    ${Jt("shape")?u:e("Add measures, as a check",()=>we("/shape",Xs("block")))}
    ${Jt("shape")&&Jt("mesh")?e("Leave the measures out",()=>we("/shape",void 0)):u}
    ${Jt("water")?e("Leave the water out",()=>we("/water",void 0)):e("Add weighed water",fk)}
  </div>`}function jh(){let e=jr(L()).length;return e?[...xi(L()),e===1?"the other number of a point":`the other numbers of ${e} points`]:xi(L())}function kk(e){let t=String(L().name??"").trim(),n=Gs(t),{open:o,answer:i,is_old:r,complaint:l}=Y(),d=i&&!r&&!l&&!jh().length&&t&&!n,c=o.shipped?"":o.file;return s`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{ar(e)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?s`<p class="aside">It stays in ${c}.</p>`:u}
    ${t?u:s`<p class="hint">Give it a name first.</p>`} ${zu(t,n)}
    ${l?s`<p class="alarm" role="status">${xk(l.field)}${l.line}</p>
            ${sr(L(),l.keep,we)}`:u}`}var zu=(e,t)=>t?s`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:u;function xk(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=$o(lr()).find(({name:r})=>e===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var Tk=200*2**20;async function Hh(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:t}),we("/name",e.name.replace(/\.\w+$/,"")),e.size>Tk){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return b(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await vc(e,o=>b(t,{share:o}));b(t,{share:1,upload:n.file}),await Nh(t)}catch(n){b(t,{complaint:n instanceof v?n.message:String(n)})}}async function Nh(e){let t=e.questions+1;b(e,{questions:t,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:r}=e;try{let l=await Wo({file:n,unit:o,role:i,up:r});t===e.questions&&b(e,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof v))throw l;if(t!==e.questions)return;let d=o?e.sizes:Pk(l.complaint),c=d.length&&!o?void 0:G(l.complaint);b(e,{sizes:d,complaint:c,is_measuring:!1})}}async function Rk(e){let{questions:t,upload:n,unit:o,up:i}=e;try{let r=await _c({file:n,unit:o,up:i});t===e.questions&&b(e,{inspection:r})}catch(r){if(!(r instanceof v))throw r;t===e.questions&&b(e,{complaint:G(r.complaint)})}}function Sk(e){return e.inspection?s`<h4>Every defect of the mesh</h4>
    ${e.inspection.defects.length?s`<ul>
            ${e.inspection.defects.map(Ak)}
          </ul>`:s`<p>None.</p>`}`:s`<button type="button" @click=${()=>{Rk(e)}}>List every defect of the mesh</button>`}var Ak=({text:e})=>s`<li>${e}</li>`;function Pk({asks:e,choices:t=[]}){if(e!=="unit")return[];let n=o=>(o??[]).map(i=>T(i,2)).join(" \xD7 ");return t.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function Ju(e,t){b(e,t),Nh(e)}function Uh(e,t){let n=l=>{let d=l.target;Hh(d.files?.[0]),d.value=""},o=l=>{l.preventDefault(),Hh(l.dataTransfer?.files[0])},[i,r]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return s` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${r} @change=${n} />
    </div>
    ${a.mesh?Dk(a.mesh,e,t):u}`}function Dk(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,l])=>[r,l?`${r}: ${l} ${r}`:r]);return s` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?s`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:u}
    ${e.is_measuring?s`<p role="status">Measuring ...</p>`:u}
    ${e.upload&&!ju.test(e.name)?s`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${oe("Unit of the file's numbers",e.unit,i,r=>Ju(e,{unit:r}))}`:u}
    ${e.complaint?s`<p class="alarm" role="alert">${e.complaint}</p>`:u}
    ${e.upload&&!e.is_measuring&&(e.complaint||e.answer)?Sk(e):u}
    ${e.upload&&(e.unit||e.answer)?s`<h4>What it shows</h4>
            ${oe("Role",e.role??e.answer?.gauge.role,Nu,r=>Ju(e,{role:r}))}
            <h4>Which way is up</h4>
            ${oe("Up",e.up??"",Uu,r=>Ju(e,{up:r||void 0}))}`:u}
    ${e.answer?s`${Ko(e.answer)} ${Ok(e,t,n)}`:u}`}var zh=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function Ok(e,t,n){let o=String(L().name??"").trim(),i=Gs(o),r=o&&!i&&!e.is_keeping;return s`${Hu()} ${qu(zh(e))} ${zu(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>qh(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>qh(e,n)}>More settings</button>
    </div>
    ${e.is_keeping?s`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function qh(e,t,n){b(e,{is_keeping:!0});try{let o=Mk(e,await kc(e.upload,Ck(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await Fk(o))return t(o);jo(o,"mesh",Y().title),await ar(n),b(e,{complaint:a.mould?.complaint?.line})}catch(o){b(e,{complaint:o instanceof v?o.message:String(o)})}b(e,{is_keeping:!1})}function Mk(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=L();return{...i,...zh(e)||o===void 0?{}:{cavities:o},mesh:n}}async function Fk(e){try{return await un({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof v&&t.status===422)return!1;throw t}}var Ck=e=>wo(e.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var ea={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},Jh={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function Vh(e){Lt();let t={...Jh,shape:Xs("block")};e==="mesh"?jo(Jh,"mesh",ea[e]):jo(e==="water"?{...t,water:Iu}:t,"form",ea[e]),na()}async function Kh(e,t){Lt(),await Gm(e,t),na()}async function ta(e){Lt(),await Ym(e),na()}function Lk(e){jo(e,"form","More about this mould"),na()}function na(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function Qh(e){if(!a.mould)return;let{way:t,title:n}=a.mould;return s`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?Uh(e,Lk):Wh(e)}
  </section>`}var Vu=()=>f({chosen_mould:void 0});function ur(e,t){let n=a.files?.moulds.find(r=>r.file===e),o=a.catalogue.find(r=>r.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:t};f({chosen_mould:i}),Ek(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function Ek(e){try{b(e,{answer:await Wo({file:e.file})})}catch(t){b(e,{complaint:t instanceof v?t.message:String(t)})}}var Bk=e=>a.files?.moulds.find(t=>t.file===e);function Gh(e,t){let n=()=>t(async()=>{await Kh(e.file,e.shipped),Vu()});return s`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"built-in":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?s`<p role="status">${e.told}</p>`:u} ${e.note?s`<p>${e.note}</p>`:u}
    ${Ds(Bk(e.file))}
    ${e.complaint?s`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${e.answer?Ko(e.answer):e.complaint?u:s`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?u:jk(e,t)}
    </div>
  </section>`}var Yh=({answer:e})=>(e?.gauge.pockets[0]?.brimful_ml??0)>=Eu;function Wk(e){let t=Yh(e)?e.slice.trim():"";return Wt(t)?`${t} mm`:t||void 0}var Ik=e=>s`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${F(e.slice)}
      @input=${t=>b(e,{slice:t.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function jk(e,t){let n=zs(e.sell),o=Wk(e),i=r=>()=>t(()=>cs({mould:e.file,name:e.name,formula:r,sell:n,slice:o}));return s`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${Js("mould-sell",e.sell,r=>b(e,{sell:r}))}
      ${Yh(e)?Ik(e):u}
    </div>
    ${n?u:s`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(a.files?.formulas??[]).map(r=>s`<li>
            <button type="button" ?disabled=${!e.answer||!n} @click=${i(r.file)}>
              <b>${r.name}</b><span>${r.note||r.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function dr(){let{view:e,run:t,order:n,formula_of:o,formulas:i,mould:r,chosen_mould:l}=a;if(e!=="reading")return Qt(e)?{name:e,file:t.file,of:t}:e==="moulds"&&r?{name:"describing",file:r.open.id,of:r}:e==="moulds"&&l?{name:"chosen",file:l.file,of:l}:e==="order"?{name:e,file:n?.open.file,of:n}:e!=="formula"?{name:e}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:gi[o],file:t.file,of:t}}async function Xh({name:e,file:t}){if(!(!(e===gi.apart&&a.formulas.apart?.file===t)&&!await ps()))try{await Hk(e,t)}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o;f({view:"runs",list_complaint:o.message})}}async function Hk(e,t=""){let n=e;if(Qt(n))return Zh(t,n);let o=["pour","pipe"].find(i=>gi[i]===e);if(o){await Zh(t,"formula"),a.view==="formula"&&st(o);return}if(e===gi.apart)return Ni(t);if(e==="order")return Ui(t);await qk(e,t)}async function Zh(e,t){e===a.run.file||!e?f({view:a.run.file?t:"runs",typed:void 0}):await yn(e,t)}async function qk(e,t){let n=e;Vu(),Lt(),f({view:nt(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=Kr(Ie).find(i=>i.id===t);e==="describing"&&o&&await ta(o),e==="chosen"&&ur(t),Nk()}async function Nk(){try{await rt(),ls()}catch(e){if(!(e instanceof v))throw e;f({list_complaint:e.message})}}var Xe={id:""},Le,Ku=!1,Gu=new Map,oa=JSON.parse(sessionStorage.getItem("left")??"{}");function tg(){let e=dr();Ku||!e||Le&&Dt(Le)===Dt(e)||(ia(),ng(e))}function ng(e){let t=!Le||Le.name===e.name&&Le.of!==void 0&&Le.of===e.of;if(Le=e,t)return Go();Xe={id:crypto.randomUUID(),before:location.hash},Gu.set(Xe.id,e.of),history.pushState(Xe,"",Dt(e)),requestAnimationFrame(zk)}function Go(){Le&&(Xe.id||(Xe={id:crypto.randomUUID()}),Gu.set(Xe.id,Le.of),history.replaceState(Xe,"",Dt(Le)))}var Uk="button, input, select, summary, a[href], [tabindex]",Qu=e=>e.id||(e.getAttribute("aria-label")??e.textContent).trim(),og=e=>[...document.querySelectorAll(`#main :is(${Uk})`)].filter(t=>Qu(t)===e);function ia(){let e=document.activeElement;!e?.closest("#main")||e.id==="main"?oa[Xe.id]={scroll:scrollY}:oa[Xe.id]={scroll:scrollY,words:Qu(e),nth:og(Qu(e)).indexOf(e)}}function zk(){scrollTo(0,0),document.activeElement?.closest("#main")||ig()}function ig(){let e=document.querySelector("#main h1");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}))}function rg(){let{scroll:e,words:t,nth:n=0}=oa[Xe.id]??{scroll:0},o=t===void 0?void 0:og(t)[n];o?o.focus({preventScroll:!0}):ig(),scrollTo(0,e)}var Yo=e=>sg({name:e,file:Qt(e)?a.run.file:void 0});async function sg(e){ia(),await Yu(e,()=>{let t=dr();t&&!(Le&&Dt(Le)===Dt(t))&&ng(t)})}async function Yu(e,t){Ku=!0;try{await Xh(e)}finally{Ku=!1,t()}}function ag(e){Xe.before===Dt(e)?history.back():sg(e)}var eg=Promise.resolve();function Jk(e,t){ia();let n=()=>history.state?.id!==e?.id;eg=eg.then(async()=>{if(!t)return Go();if(n())return;let o=e?Gu.get(e.id):void 0,i=[a.run,a.formulas.apart,a.order].find(r=>r&&r===o);await Yu(i?{...t,file:"open"in i?i.open.file:i.file}:t,()=>{Le=dr(),!n()&&(Xe=e??{id:crypto.randomUUID()},Go(),requestAnimationFrame(rg))})})}function lg(){history.scrollRestoration="manual",addEventListener("popstate",e=>{ic()||Jk(e.state,Ea(location.hash))}),addEventListener("pagehide",()=>{ia(),sessionStorage.setItem("left",JSON.stringify(oa))})}async function ug(){let e=Ea(location.hash);e&&(Xe=history.state??{id:""}),await Nm(Rc(e)),e&&Vk(e)&&await Yu(e,()=>{Le=dr(),Go(),requestAnimationFrame(rg)}),await Um()}var Vk=e=>!Le||Dt(Le)===Dt(e);function Zo(e=a.plan?"The figures below are out of date.":"No figures yet."){let t=Hs()?void 0:a.complaint;return s`<div class="complaints" role="status">
      ${t?s`<p class="alarm">
                <strong>${e}</strong>
                ${uo(t.field)}${G(t)}
              </p>
              ${t.is_fault?s`<button type="button" @click=${Xu}>Ask again</button>`:u}
              ${ut("run")?sr(a.run.now,t.keep,(n,o)=>V("run",n,o)):Zu(t)}
              ${Kk()?s`<button type="button" @click=${ed}>Go to the field</button>`:u}`:u}
    </div>
    ${Yi()}`}function Zu({keep:e}){let{studio:t}=a.beside;return t&&ut("studio")?sr(t.now,e,(n,o)=>V("studio",n,o)):u}function uo(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function Xu(){re(),a.run.failed&&Ct()}function Kk(){if(dg())return!0;let e=It();return e?document.activeElement!==e:Qk()}var Qk=()=>a.view!=="set-up"&&ut("run")&&a.complaint!==void 0&&a.complaint.field!=="",dg=()=>["pour","pipe"].find(e=>a.complaint?.file&&a.complaint.field&&ut(e));function ed(){let e=It(),t=dg();if(e)return Rn(e);t?st(t):Yo("set-up"),Gk(()=>Rn(It()))}function Gk(e){requestAnimationFrame(()=>requestAnimationFrame(e))}var cg=()=>[...Jr().map(e=>Ht(e)),...zr().map(qt)];function pg(){let e=a.formula_of,t=a.formulas[e];if(!t)return s`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${cg()}${Zo()}
      <p>Reading the formula ...</p>
      ${nd(e)}`;let n=a.plan&&Jo(a.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return s`${cg()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"Unnamed formula")}</h1>
    <p class="aside">${Yk(e)}</p>
    <div class="choice">${nd(e)}${e==="apart"?Zk():u}</div>
    ${Vo(a.files?.formulas.find(i=>i.file===t.file))} ${Xk(e,o,n)} ${fg(e)}
    ${bu(e)} ${yu(e,o)} ${ku(e)} ${fu(e)}
    <div class="choice">${nd(e)}</div>`}var mg=e=>[fg(e),bu(e),yu(e,void 0),ku(e),fu(e)],td=()=>String(a.run.now.name??a.run.file);function Yk(e){let t=a.formulas[e],n=t.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===t&&a.formulas.pipe===t;return e==="apart"?`Opened on its own; the figures are for a base of "${td()}".${n}`:o?`Base and topping of "${td()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${td()}".${n}`}function nd(e){let t=e==="apart";return s`<button type="button" class="strong" @click=${()=>ag(t?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${t?"Close the formula":"Back to the run"}
  </button>`}function Zk(){return s`<button type="button" @click=${()=>{jl("pour")}}>Use it as the base</button> ${Ye()?s`<button type="button" @click=${()=>{jl("pipe")}}>Use it as the topping</button>`:u}`}function Xk(e,t,n){return s`<section class="strip" aria-label="What comes of it">
    ${t&&n?s`<dl>
            ${[...ex(e,n),...tx(e,t)].map(([o,i,r])=>s`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${r?Tn(r):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${nx(e)}
  </section>`}function ex(e,t){let n=e==="pipe"?lu(t,t.whippings[0]):"";return n?[["For one whipping",n]]:Ce(t.whole)?[["For one batch",Nt(t.whole,t.batch)]]:[]}function tx(e,t){let n=vn(e).length?" \u26A0":"";return[["Fats",S(C(a.units,t.fats_g))],["Superfat as weighed",`${at(t.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...Ls(t).map(({one:o})=>[o.name,S(lo(a.units,o))])]}function nx(e){let t=Hs()?void 0:a.complaint;if(!t)return s`<div role="status"></div>
      ${Yi()}`;let n=ut(e),o=n&&t.field!==""&&document.activeElement!==It();return s`<div role="status" class="asks">
      <p class="alarm">
        <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${uo(t.field)}${G(t)}
      </p>
      ${t.is_fault?s`<button type="button" @click=${Xu}>Ask again</button>`:u}
      ${o?s`<button type="button" @click=${()=>It()?.focus()}>Go to the field</button>`:u}
    </div>
    ${Yi()}`}function fg(e){return s`<section class="card" aria-label="Name">
    ${h({label:"Name",of:e,at:"/name",wide:!0})}
    ${P({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>h({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var od=e=>b(a.new_formula,e);function hg(){let{name:e,copied:t}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,r)=>Number(i.shipped)-Number(r.shipped)),o=i=>()=>ie(async()=>{await i(e.trim()),od({name:"",copied:""})});return s`${ct("Formulas")}
    <section aria-label="Formulas">
      ${Rt(n,ox)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${F(e)}
            @input=${i=>od({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e.trim()} @click=${o(Jm)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>od({copied:i.target.value})}
          >
            <option value="" .selected=${F(t==="")}>choose ...</option>
            ${n.map(i=>s`<option value=${i.file} .selected=${F(i.file===t)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!e.trim()||!t}
          @click=${o(i=>Vm(t,i))}
        >
          Make the copy
        </button>
      </div>
      ${e.trim()?"":s`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${pt("formula")}`}function ox(e){let t=e.changed?[`changed ${Me(e.changed)}`]:[];return Ut({kind:bo,one:e,facts:t,open:()=>Ni(e.file)})}function ix(e){Lt(),ur(e,`Saved in ${e}.`)}function gg(){let{chosen_mould:e}=a;return s`${ct("Moulds")}
  ${e?Gh(e,ie):Qh(ix)??s`${lx()} ${rx()}`}`}function rx(){let e=(a.files?.moulds??[]).filter(n=>!n.shipped),t=a.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return s`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Rt([...e,...t],sx)} ${pt("mould")}
  </section>`}function sx(e){let t=e.shipped?ax(e.file):cx(e.file),n=()=>Promise.resolve(ur(e.file));return Ut({kind:Ie,one:e,facts:t,picture:e.file,open:n})}var ax=e=>a.catalogue.filter(t=>t.path===e).map(t=>`${S(ke(a.units,t.brimful_ml))}, ${Z(t.cavities,"cavity","cavities")}; ${t.description}`);function lx(){return s`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${ux()}
    <div class="choice">
      ${Object.entries(ea).map(([e,t])=>s`<button type="button" @click=${()=>Vh(e)}>${t}</button>`)}
    </div>
  </section>`}function ux(){return Kr(Ie).map(e=>{let t=String(he(e.text)?.name??"").trim()||dx(e)||"a mould without a name yet";return s`<div class="banner">
      <p>Your unsaved mould <b>${t}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>ie(()=>ta(e))}>Continue</button>
        <button type="button" @click=${()=>{mn(Ie,e.id),N()}}>Discard it</button>
      </div>
    </div>`})}var dx=({file:e})=>a.files?.moulds.find(t=>t.file===e)?.name;function cx(e){let t=Sm(e);return t?"complaint"in t?[`it cannot be measured: ${t.complaint}`]:[S(ke(a.units,t.brimful_ml)),Z(t.cavities,"cavity","cavities")]:["measuring ..."]}var px=300,mx=1e3;function ra(){let{quoted:e,plan:t,quote_wish:n,is_old:o}=a,i=e?.of===t&&e?.wish===n;!i&&!o&&fx();let r=i?e?.complaint:void 0;return{quote:e?.quote,complaint:r,is_old:o||!i||r!==void 0}}function rd(){a.quoted&&f({quoted:{...a.quoted,of:void 0}})}var cr,id=!1;function fx(){let{plan:e,quote_wish:t}=a;id||cr?.of===e&&cr?.wish===t||(window.clearTimeout(cr?.timer),cr={of:e,wish:t,timer:window.setTimeout(()=>{gx()},a.quoted?px:0)})}var sa=e=>e.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function _g(e,{numbers:t="",by:n,figure:o}){let i=sa(t);return{...e,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var aa=()=>_g({file:a.run.file,run:a.run.now},a.quote_wish);function hx(e,{numbers:t=""}){return e.field==="/sell"&&sa(t)?{...e,file:"",field:"sell"}:e}async function gx(){cr=void 0;let{run:e,plan:t,planned:n,quote_wish:o,is_old:i}=a;if(!(!t||!n||i)){id=!0;try{let r=await hc(_g(n,o));e===a.run&&f({quoted:{of:t,wish:o,quote:r}})}catch(r){if(!(r instanceof v))throw r;if(e!==a.run)return;let l=hx(r.complaint,o);f({quoted:{of:t,wish:o,quote:a.quoted?.quote,complaint:l}}),r.may_pass&&window.setTimeout(rd,mx)}finally{id=!1}}}var _x=300,$x=1e3,ad=e=>{let{by:t,figure:n}=a.quote_wish;return[e.open.now,e.open.file,e.times,t,n,a.plan,Pi()]},$g=(e,t)=>e!==void 0&&e.every((n,o)=>n===t[o]);function wg(){let e=De(),{quoted:t}=e;if(!To(e.open.now)||e.open.theirs)return{is_old:!0};let n=$g(t?.of,ad(e));!n&&!a.is_old&&wx(e);let o=n?t?.complaint:void 0;return{quote:t?.quote,complaint:o,is_old:a.is_old||!n||o!==void 0}}function ld(){let{quoted:e}=De();e&&b(De(),{quoted:{...e,of:[]}})}function ud({open:e,times:t}){let{by:n,figure:o}=a.quote_wish,i=sa(t);return{file:e.file,order:e.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var la,sd=!1;function wx(e){let t=ad(e);sd||$g(la?.of,t)||(window.clearTimeout(la?.timer),la={of:t,timer:window.setTimeout(()=>{bx(e)},e.quoted?_x:0)})}async function bx(e){if(la=void 0,e===a.order){sd=!0;try{if(await hn(),await Yn(),await Gr(),!To(e.open.now))return;let t=ad(e);await yx(e,t)}catch(t){if(!(t instanceof v))throw t}finally{sd=!1,b(e,{})}}}async function yx(e,t){try{b(e,{quoted:{of:t,quote:await gc(ud(e))}})}catch(n){if(!(n instanceof v))throw n;b(e,{quoted:{of:t,quote:e.quoted?.quote,complaint:n.complaint}}),n.may_pass&&window.setTimeout(()=>e===a.order&&ld(),$x)}}var Xo={of:"order",at:"/lines",in_order:!0,stays:!0};function bg(){return s`<section class="card" aria-label="The order">
    <div class="row">
      ${h({of:"order",label:"For",at:"/for",optional:!0})}
      ${h({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${h({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${H("order","/lines")} ${k(Xo).map((e,t)=>vx(t))} ${kx()}
  </section>`}var yg=()=>(a.files?.runs??[]).filter(({shipped:e})=>!e);function vg(e){let t=Un(De().open.file,e);return a.files?.runs.find(n=>n.file===t)}var kg=e=>vg(e)?.name||e;function xg(e){let t=xo(De().open.now).map(({run:n})=>n);return yg().filter(({file:n})=>n===e||!t.includes(n)).map(n=>[n.file,n.name||n.file])}function vx(e){let{run:t}=xo(De().open.now)[e]??{run:""},n=`/lines/${e}`,o=vg(t)?.pieces,i=t?kg(t):`line ${e+1}`;return s`<div class="row" id=${B(Xo,e)} role="group" aria-label=${i}>
    ${ge({of:"order",label:"Run",at:`${n}/run`,answers:xg(t),unsaid:"choose ..."})}
    ${h({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${Z(o,"piece")}`})}
    ${k(Xo).length>1?h({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):u}
    ${q(Xo,e,i)}
  </div>`}function kx(){let e=xg();return yg().length?e.length?s`<div class="row">
    ${ge({of:"order",label:k(Xo).length?"Another run":"The run that is ordered",at:"/lines/-",answers:e,unsaid:"choose ...",optional:!0,chosen:"",take:t=>t&&I(Xo,{run:t},kg(t))})}
  </div>`:s`${u}`:s`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}var co=e=>(t,n,o="")=>s`<tr class=${o}>
      <th scope="row">${t}</th>
      ${e.map(i=>s`<td><b>${n(i)}</b></td>`)}
    </tr>`,pr=(e,t)=>s`<tr class="group">
    <th scope="rowgroup" colspan=${t.length+1}>${e}</th>
  </tr>`;function mr(e,t,n,o){let i=`quote ${t}`,r=a.open.has(i),l=`quote-${t.replaceAll(/\W/g,"-")}`,d=s`<button
    type="button"
    class="line"
    aria-expanded=${r?"true":"false"}
    aria-controls=${r?l:u}
    @click=${()=>Ee("open",i)}
  >
    ${t}<span class="how" aria-hidden="true">${r?"\u2013":"="}</span>
  </button>`;return s`${co(e)(d,n)}
  ${r?s`<tr class="opened">
          <td colspan=${e.length+1} id=${l}>${e.map(o)}</td>
        </tr>`:u}`}var fr=(e,t)=>s`<div class="sum">
    <table>
      <caption>
        ${e}
      </caption>
      <tbody>
        ${t}
      </tbody>
    </table>
  </div>`;function ua({parts:e,items:t},n){let o=e.find(i=>i.part===n);return o?t.some(i=>i.part===n&&i.cost!==null)?o.each:"unpriced":"\u2013"}var da=(e,{items:t},n)=>fr(e,t.filter(o=>o.part===n).map(({name:o,amount:i,cost:r,how:l})=>s`<tr>
            <th scope="row">${o}</th>
            <td>${r??"unpriced"}</td>
            <td>${l||i}</td>
          </tr>`)),ca=(e,t)=>mr(e,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>s`${xx(t(n),n.cash)} ${Tx(n.cash)}`),xx=(e,t)=>s`${fr(`Packs to buy, ${e}`,(t?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:r,seller:l})=>s`<tr>
          <th scope="row">${n}</th>
          <td>${r}</td>
          <td>${o} × ${i}${l?`, ${l}`:""}</td>
        </tr>`))}
  ${t?.unpriced.length?s`<p class="alarm">No pack is listed, and not in the sum: ${t.unpriced.join(", ")}.</p>`:u}
  ${t&&!t.proved_cheapest?s`<p class="hint">Not proved to be the least that is possible.</p>`:u}`,Tx=e=>fr("Left of them when all is made",(e?.left??[]).map(({shown_as:t,left:n})=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`));function hr(e){let t=e.flatMap(({prices:n})=>n);return t.filter((n,o)=>t.findIndex(({way:i})=>i===n.way)===o)}var Tg=e=>`${T(e,1)} %`;function Rx(e){return"margin_percent"in e?`margin ${T(e.margin_percent,2)} %`:"markup_percent"in e?`markup ${T(e.markup_percent,2)} %`:"price as set"}var dd=(e,t)=>({prices:n})=>{let o=n.find(i=>i.way===e);return o?t(o):"\u2013"};function pa(e,t,{way:n,by:o,ask:i,with_tax:r},l,d=u){let c=i===r,p=co(e),m=$=>dd(n,$),_=($,y)=>l?s`${y} ${Tn($)}`:y;return s`<tbody>
    ${pr(s`<span class="way">${n}</span>, ${Rx(o)}`,e)} ${d}
    ${p(t?c?"Ask, with tax":"Ask, without tax":"Ask",m(cd),"ask")}
    ${t?p("tax in it",m(({tax:$})=>c?$:"none")):u}
    ${p("fees",m(({fees:$})=>$))}
    ${p("left for you",m(({profit:$})=>$))}
    ${p(_("margin","margin, of the price"),m($=>Tg($.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m($=>Tg($.markup_percent)))}
  </tbody>`}var cd=({ask:e,is_below_cost:t})=>t?s`<span class="below">${e}<small>below cost</small></span>`:e;function ma(e,t){let n=o=>e.filter(({prices:i})=>i.some(r=>r.way===o&&r.is_below_cost));return hr(e).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>s`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${t(i)}
        </p>`)}var pd=e=>e===1?"once":`${e} times`;function Rg({times:e,currency:t,has_tax:n},o){let i=co(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${e.map(r=>s`<th scope="col"><b>${pd(r.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:r})=>r)}
        </tbody>
        <tbody>
          ${pr("It costs",e)} ${e[0].lines.map((r,l)=>Sx(e,l))}
          ${i("The whole order",({cost:r})=>r,"sum-of")}
        </tbody>
        <tbody>
          ${ca(e,r=>`made ${pd(r.times)}`)}
        </tbody>
        ${hr(e).map((r,l)=>pa(e,n,r,l===0,Dx(e,r.way)))}
      </table>
    </div>`}var md=({run:e,sell:t})=>`${e??""}, ${t} ${t===1?"piece":"pieces"}`,Sx=(e,t)=>mr(e,md(e[0].lines[t]),({lines:n})=>n[t].cost,({lines:n})=>s`${Ax(n[t])} ${n[t].parts.map(({part:o})=>Px(n[t],o))}`),Ax=e=>fr(`A piece of ${md(e)}, ${e.make} made`,[...e.parts.map(({part:t})=>[t,ua(e,t)]),["Cost of a piece",e.cost_each]].map(([t,n])=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`)),Px=(e,t)=>da(`${t} of all of them, ${md(e)}`,e,t),Dx=(e,t)=>e[0].lines.map(({run:n},o)=>co(e)(`${n??""}, a piece`,({lines:i})=>dd(t,cd)(i[o]))),Sg=({times:e})=>ma(e,t=>`the order loses money, made ${t.map(n=>pd(n.times)).join(", ")}.`);function Ag({times:e}){let t=e.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=e.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:r})=>r.map(l=>`${i??""}: ${l}`)));return n.push(...t.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?s`<div class="dangers">
    ${[...new Set(n)].map(o=>s`<p class="danger"><strong>${bt}</strong> ${o}</p>`)}
  </div>`:u}function Pg({times:e,remarks:t=[]}){let[{together:n,lines:o}]=e,i=n.flatMap(({cautions:r})=>r).filter(({severity:r})=>r!=="danger");return!n.length&&!t.length?u:s`<ul class="limits">
    ${n.map(r=>s`<li>
          <b
            >Poured together (${r.word}): ${sn(r.lines.map(l=>o[l].run??""))} from one base,
            "${r.formula}", ${S(C(a.units,r.make_g))} in
            ${Z(r.batches.reduce((l,{count:d})=>l+d,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:r})=>s`<li>${r}</li>`)} ${t.map(r=>s`<li>${r}</li>`)}
  </ul>`}var po=e=>b(a.printing,e);function Dg(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function Og(e){if(!a.printing.is_working){po({is_working:!0,told:"Making it ...",on:a.view});try{await Ox(),po({told:await e()})}catch(t){po({told:t instanceof Error?t.message:String(t)})}po({is_working:!1})}}async function Ox(){await hn(),await Yn();let e=a.view==="order"?a.order?.open:void 0,t=Zt("run")??(e?.theirs&&e);if(t)throw new Error(`${t.file} was changed outside this page: choose first which version to keep.`)}var ei=()=>a.printing.on===a.view?a.printing.told:"",St=(e,t)=>()=>Og(async()=>{let n=URL.createObjectURL(await Pt(t));return Dg(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),Mx=e=>()=>Og(async()=>(Dg(await yc(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),Fx=e=>{po({paper:e}),localStorage.setItem("paper",e)},fa=()=>oe("Paper",a.printing.paper,[["A4","A4"],["Letter","Letter"]],Fx),mt=(e,t,n="",o=!1)=>s`<button
    type="button"
    class=${n}
    ?disabled=${a.printing.is_working||o}
    @click=${()=>{t()}}
  >
    ${e}
  </button>`,On=({words:e,kind:t,file:n,of:o,is_asleep:i},r="")=>s`${mt(`${e}, to print`,Mx({kind:t,...o}),r,i)}
  ${a.files?.makes_pdf?mt(`${e}, PDF`,St(`${n}.pdf`,{kind:`${t}-pdf`,...o}),"",i):""}`,ti=e=>e.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var Vt={run:"/money/currency",studio:"/currency"},ha={run:"/money/prices",studio:"/prices"},ni=()=>zt(Vt)!==void 0;function oi(){let[e,t]=[g("run",Vt.run),g("studio",Vt.studio)];return e!==void 0&&t!==void 0&&e!==t?[]:[Vt,ha]}var ga=()=>D("studio",Vt.studio)||String(zt(Vt)??"");function Cx(e){return e.length<2?e[0]?.way:e.find(({way:t})=>t===a.printing.way)?.way}function _a({file:e,question:t,prices:n,is_old:o}){let i=ti(e),r=Cx(n),l={quote:n.length>1&&r?{...t,way:r}:t},d=n.map(p=>[p.way,p.way]),c={buy:{files:[e]}};return s`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${d.length>1?s`<p class="question">The price that is offered</p>
            ${oe("The price that is offered",r,d,p=>b(a.printing,{way:p}))}`:u}
    <div class="choice">
      ${n.length?On({words:"Offer",kind:"offer",file:`${i} offer`,of:l,is_asleep:o||!r}):u}
      ${On({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:t}})}
      ${a.files?.studios.length?s`${On({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${mt("Shopping list, table",St(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:u}
    </div>
    ${n.length?r?u:s`<p class="hint">An offer has one price: choose which.</p>`:s`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${ei()}</p>
  </section>`}var fd=class extends HTMLElement{#t;#n="";#e="";#i="";#o=new IntersectionObserver(([t])=>t.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#r()}disconnectedCallback(){this.#o.disconnect(),this.#s()}set words(t){this.#n=t}set question(t){JSON.stringify(t)!==JSON.stringify(this.#t)&&(this.#t=t,this.#s(),this.#a(),this.#r())}#r(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#s(){this.#e&&URL.revokeObjectURL(this.#e),[this.#e,this.#i]=["",""]}async#l(){this.#o.disconnect();let t=this.#t,[n,o]=await Lx(t);if(t!==this.#t||!this.isConnected)return URL.revokeObjectURL(n);[this.#e,this.#i]=[n,o],this.#a()}#a(){let t=this.#i||"Drawing ...";ot(this.#e?s`<img src=${this.#e} alt=${this.#n} />`:s`<p class="hint">${this.#t?t:u}</p>`,this)}};async function Lx(e){try{return[URL.createObjectURL(await Pt({kind:"picture",quote:e})),""]}catch(t){if(!(t instanceof v))throw t;return["",t.message]}}customElements.define("cost-picture",fd);function Mg(e,t){let{costs:n,currency:o}=e;if(!n.length)return u;let[i,r]=[n[0],n.at(-1)],l=({sell:d,each:c})=>`${c} ${o} at ${d}`;return s`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${l(i)} to ${l(r)}, and where the money of a piece goes. The figures stand below.`}
        class=${t?"old":""}
        .question=${t?Se:aa()}
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
          ${Ex(e).map(({sell:d,each:c})=>s`<tr>
                <th scope="row">${d}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function Ex({costs:e,numbers:t,steps:n}){let o=new Set([...t.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),e[0].sell,e.at(-1).sell]);return e.filter(({sell:i})=>o.has(i))}var Fg=({sell:e})=>`${e} to sell`;function Cg({numbers:e,currency:t,has_tax:n},o){let i=co(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
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
          ${pr("A piece costs",e)} ${Bx(e).map(r=>Wx(e,r))}
          ${i("Cost of a piece",r=>r.cost_each,"sum-of")} ${i("The whole run",r=>r.cost)}
        </tbody>
        <tbody>
          ${ca(e,Fg)}
        </tbody>
        ${hr(e).map((r,l)=>pa(e,n,r,l===0))}
      </table>
    </div>`}var Bx=e=>[...new Set(e.flatMap(({parts:t})=>t.map(({part:n})=>n)))],Wx=(e,t)=>mr(e,t,n=>ua(n,t),n=>da(`${t} of the whole run, ${Fg(n)}`,n,t)),Lg=({numbers:e})=>ma(e,t=>`each piece sold loses money, at ${t.map(({sell:n})=>n).join(", ")} to sell.`);function Eg(){return s`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${ni()?jx():Ix()}
  </section>`}var Ix=()=>s`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>hd()}>To the prices paid</button>`;function hd(e,t="lane-studio"){se("set-up studio"),e&&qe("studio",e),Yo("set-up"),requestAnimationFrame(()=>K(j(t)))}function jx(){let{quote:e,complaint:t,is_old:n}=ra();return s`${e?s`${Hx(e)} ${Lg(e)}`:u}
    <div class="row">${Ux(t)}</div>
    ${gd()?u:_d(e?.currency,t)} ${t?Nx(t):u}
    ${e?Kx(e,n):t?u:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}function Hx({numbers:e}){let t=[...new Set(e.flatMap(o=>o.dangers))];if(!t.length)return u;let n=o=>e.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return s`<div class="dangers">
    ${t.map(o=>s`<p class="danger"><strong>${bt}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var qx=["sell","margin","markup","price"],ii=(e,t)=>e?.file===""&&e.field===t?G(e):void 0;function Nx(e){return qx.some(t=>ii(e,t))?u:s`<p class="alarm" role="status">${uo(e.field)}${G(e)}</p>
    ${e.is_fault?s`<button type="button" @click=${rd}>Ask again</button>`:e.field.startsWith("/")?s`<button type="button" @click=${ed}>Go to the field</button>`:u}
    ${Zu(e)}`}function $a({id:e,label:t,unit:n,value:o,hint:i,complaint:r,take:l,left:d}){return s`<div class="field ${r?"wants":""}">
    <label for=${e} data-said=${n??u}>${t}</label>
    <input
      id=${e}
      .value=${F(o)}
      @input=${c=>l(c.target.value)}
      @blur=${()=>d?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${r?"true":"false"}
      aria-describedby=${r||i?`${e}-said`:u}
    />
    ${xe(e,r,i)}
  </div>`}function Ux(e){let{numbers:t}=a.quote_wish;return $a({id:"quote-numbers",label:"Numbers of pieces",value:t??String(a.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:ii(e,"sell"),take:n=>Ri({numbers:n}),left:()=>{t!==void 0&&!t.trim()&&Ri({numbers:void 0})}})}var zx=()=>pe()?hd("money asking",`${ee("studio","/asking")}-name`):hd(),gd=()=>Object.keys(g("studio","/asking")??{}).length>0,Jx=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],Vx={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function _d(e,t){let{by:n,figure:o}=a.quote_wish,{label:i,unit:r}=Vx[n??"price"],l=d=>r&&Wt(d)?`${d.trim()} ${r}`:d;return s`${oe("A price, for this moment",n,Jx,d=>{Ri({by:d,figure:""}),K(j("quote-figure"))})}
    ${n?s`<div class="row">
            ${$a({id:"quote-figure",label:i,unit:r||e,value:r?o.replace(/ %$/,""):o,complaint:ii(t,n),take:d=>Ri({figure:l(d)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${zx}>Keep my ways of selling</button>`}function Kx(e,t){let n=[...new Set(e.numbers.flatMap(o=>o.unpriced))];return s`${n.length?s`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${Cg(e,t)} ${Qx(e,t)} ${Mg(e,t)}
  ${_a({file:a.run.file,question:aa(),prices:e.numbers[0].prices,is_old:t})}`}function Qx({numbers:e,steps:t,pack_steps:n,gaps:o,currency:i},r){let l=d=>d===null?"":`, ${d} ${i} more`;return s`<div class="worth-making ${r?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${e.flatMap(({around:d})=>d.map(({text:c})=>s`<li><b>${c}</b></li>`))}
      ${o.map(({from:d,to:c,why:p})=>s`<li><b>${d===c?d:`${d} to ${c}`} cannot be made: ${p}.</b></li>`)}
    </ul>
    ${t.length?s`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${t.map(d=>s`<li><b>${d.sell}: ${d.begins}${l(d.more)}</b></li>`)}
            </ul>
          </details>`:u}
    ${n.length?s`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(d=>s`<li><b>${d.sell}: ${d.shown_as}${l(d.more)} to lay out</b></li>`)}
            </ul>
          </details>`:u}
  </div>`}function Bg(){let{order:e}=a;if(!e)return s`<h1 tabindex="-1">Order</h1>`;let{open:t}=e,{due:n}=t.now;return s`${Ht(t)} ${qt(t)}
    <h1 tabindex="-1">${String(t.now.for||"Order")}</h1>
    <p class="aside">${t.file}${n?`, due ${Me(String(n))}`:u}</p>
    ${bg()}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${To(t.now)?Yx():Gx()}
    </section>
    ${To(t.now)?nT():u}`}var Gx=()=>s`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function Yx(){let{quote:e,complaint:t,is_old:n}=wg();return s`${e?s`${Ag(e)} ${Sg(e)}`:u}
    <div class="row">${Zx(t)}</div>
    ${gd()?u:_d(e?.currency,t)} ${t?eT(t):u}
    ${e?s`${tT(e)} ${Pg(e)} ${Rg(e,n)}
          ${_a({file:De().open.file,question:ud(De()),prices:e.times[0].prices,is_old:n})}`:t?u:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}var Zx=e=>$a({id:"order-times",label:"How often it is made",value:De().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:ii(e,"times"),take:t=>b(De(),{times:t})}),Xx=["times","margin","markup","price"];function eT(e){if(Xx.some(n=>ii(e,n)))return u;let t=ut("order");return s`<p class="alarm" role="status">
      ${t?s`${uo(e.field)}${G(e)}`:e.line}
    </p>
    ${e.is_fault?s`<button type="button" @click=${ld}>Ask again</button>`:t&&It()?s`<button type="button" @click=${()=>Rn(It())}>Go to the field</button>`:u}`}function tT({times:e}){let t=[...new Set(e.flatMap(n=>n.unpriced))];return t.length?s`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${t.join(", ")}. The cost leaves it out.
  </p>`:u}function nT(){let{file:e,now:t}=De().open,n={plan:{file:e,order:t},paper:a.printing.paper};return s`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${fa()}
    <div class="choice">
      ${On({words:"Bench sheets",kind:"sheet",file:`${ti(e)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${ei()}</p>
  </section>`}var oT=(e,t)=>(e.due??"~").localeCompare(t.due??"~")||(t.changed??"").localeCompare(e.changed??"");function Wg(){let e=[...a.files?.orders??[]].sort(oT),t=a.new_order.trim(),n=()=>{ie(async()=>{await nf(t),f({new_order:""})})};return s`${ct("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${e.length?Rt(e,iT):s`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${F(a.new_order)}
            @input=${o=>f({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t} @click=${n}>Begin the order</button>
      </div>
      ${t?"":s`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${pt("order")}`}function iT(e){let{pieces:t,due:n,changed:o}=e,i=[t===void 0?"":Z(t,"piece"),n?`due ${Me(n)}`:"",o?`changed ${Me(o)}`:""].filter(Boolean);return Ut({kind:Jn,one:e,facts:i,open:()=>Ui(e.file)})}function jg(){if(a.view==="order"&&a.order)return Ig(a.order.open);let e=$n();if(e)return Ig(e);let t=rT();if(t)return t;let{run:n}=a,o=a.formula_of==="apart"||!(U(n)||n.theirs||n.failed);return a.view==="formula"&&o?sT():n.theirs?bd(n):n.failed?ba(`Not saved: ${n.failed}`):U(n)?wd:wa(n.shipped?$d:`Saved in ${n.file}`)}function Ig(e){return e.theirs?bd(e):e.failed?ba(`Not saved: ${e.failed}`):U(e)?wd:wa(e.shipped?$d:`Saved in ${e.file}`)}var $d="Built-in: your first change is saved as a copy.",wd={words:"Saving ...",is_kept:!1},wa=e=>({words:e,is_kept:!0}),ba=e=>({words:e,is_kept:!1,is_failed:!0}),bd=e=>ba(Gn(e)?`Not saved: ${e.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${e.file} was changed outside this page. Choose which version to keep.`);function rT(){let e=a.formulas.apart?"apart":"run",t=Zt(e);if(t)return bd(t);if((e==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&U(o)))return a.complaint?.file===""?ba(`Not saved: ${a.complaint.problem}`):wd}function sT(){let e=a.formulas[a.formula_of];return wa(e?e.shipped?$d:`Saved in ${e.file}`:"")}function va(){let{view:e,mould:t,order:n,past:o,future:i}=a;if(e==="moulds"&&t)return ya(t,Zm,Xm);let r=nt(e)?$n():void 0;return r?ya({past:Hg(r,o),future:Hg(r,i)},Fi,Rl):nt(e)?{undo:Li()&&cu,redo:Ml()&&Gf}:e==="order"&&n?ya(n,of,rf):ya({past:o,future:i},Fi,Rl)}function Hg(e,t){let n=t.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===e);return o&&o.now!==e.now?t:[]}var ya=({past:e,future:t},n,o)=>({undo:e.length?n:void 0,redo:t.length?o:void 0});var qg={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips"},aT={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},lT="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",uT="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",yd=e=>s`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${M`<path d=${e} />`}</svg>`;function zg(){let e=a.view==="reading";return s`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${e?u:s`<nav class="rail-lists" aria-label="Lists">
                ${xc.map(t=>Jg(t,qg[t],s`${qg[t]}`))}
              </nav>
              ${cT()}`}
    </div>
    ${e?u:pT()}
  </header>`}var dT={metric:s`g<span class="wide">, mm</span>`,both:s`both`,us:s`oz<span class="wide">, in</span>`},ka=["metric","both","us"],Ng={metric:"g",both:"both",us:"oz"},Ug=e=>()=>{f({units:e}),localStorage.setItem("units",e)};function cT(){let e=ka[(ka.indexOf(a.units)+1)%ka.length];return s`<div class="tools units" role="group" aria-label="Units">
      ${ka.map(t=>s`<button type="button" aria-pressed=${a.units===t?"true":"false"} @click=${Ug(t)}>
            ${dT[t]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${Ug(e)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${Ng[a.units]}<span
        class="unseen"
        >. Change to ${Ng[e]}</span
      >
    </button>`}function pT(){let{undo:e,redo:t}=va();return s`<div class="bar">
    ${a.run.file?mT():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!e} @click=${e}>${yd(lT)}<span>Undo</span></button>
      <button type="button" ?disabled=${!t} @click=${t}>${yd(uT)}<span>Redo</span></button>
    </div>
    ${a.run.file||a.view==="order"?_T():u}
  </div>`}function mT(){return s`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${Tc.map(fT)}</div>
  </nav>`}function fT(e){let[t,n]=aT[e],o=hT(e);return Jg(e,o?`${t}, ${o.words}`:t,s`${yd(n)}<span>${t}</span>${o?s`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function hT(e){if(e==="watch"&&uf())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(e==="set-up"&&gT())return{sign:"\u25CB",words:"missing"}}var gT=()=>a.complaint!==void 0&&!a.complaint.is_fault;function Jg(e,t,n){let o=a.view===e||a.view==="order"&&e==="orders";return s`<button
    type="button"
    aria-label=${t}
    aria-current=${o?"page":u}
    @click=${()=>{Yo(e)}}
  >
    ${n}
  </button>`}function _T(){let{words:e,is_kept:t,is_failed:n}=jg();return s`<p class="saving ${n?"failed":t?"kept":""}" role="status">${e}</p>`}function Kg(e){if(!qf(e))return u;let{whole:t}=e,{batches:n}=t.pieces,o=Ce(t)?`${Z(n,"batch","batches")} together`:"all whippings together";return s`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${Vg(e,"pour","The base, whole run")}
      ${t.pipe?Vg(e,"pipe","The topping, whole run"):u} ${$T(e)}
    </div>
  </section>`}function Vg(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,r=[...sh(i),...Ls(i)];return s`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:l,i:d})=>xa(`${t}.ingredients.${d}.g`,l.name,lo(a.units,l)))}
    ${xa(`${t}.make_g`,t==="pour"?"Base in all":"Topping in all",C(a.units,i.make_g))}
  </div>`}var xa=(e,t,n)=>O({key:`needs.${e}`,label:t,shown:n,of:e});function $T(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((r,l)=>r.colours.map((d,c)=>({layer:r,one:d,i:l,j:c}))),o=t.dust??[];if(!n.length&&!o.length)return u;let i=r=>le(a.units,Oe(r,""));return s`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:l,i:d,j:c})=>xa(`pour.layers.${d}.colours.${c}.g`,`${l.name}, for ${r.name}`,lo(a.units,l)))}
    ${o.map((r,l)=>xa(`dust.${l}.g`,r.name,i(r)))}
  </div>`}function Qg(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:l}=e.piece,d=r?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return s`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${O({key:"piece.fresh",label:c("Fresh"),shown:C(a.units,n),of:"piece.fresh_g"})}
      ${o===null?u:O({key:"piece.cured",label:c("Cured"),shown:C(a.units,o),of:"piece.cured_g"})}
      ${r?O({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:C(a.units,r.cured_g??r.fresh_g),of:r.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:O({key:"piece.label",label:"Net weight for the label",shown:C(a.units,i,0),of:"piece.label_g"})}
      ${l?O({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(p=>T(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${t&&t.amount!==null?s`${O({key:"piece.cost",label:"Material cost of one piece",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,of:"piece.cost.amount"})}
            ${t.unpriced.length?s`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:u}`:s`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${vd(e)}
    </section>
    ${Eg()} ${Kg(Jo(e))}`}function vd(e){let t=e.label;if(!t)return u;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?s`<h3>${i}</h3>
          <p>${r}</p>`:u;return s`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>s`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[Yg,xd]=[440,270],[gr,kd,Ta,ri]=[64,Yg-10,10,xd-52],wT=6,bT=8;function Gg(e){let t=e/wT,n=10**Math.floor(Math.log10(t)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=t);return Array.from({length:Math.floor(e/o+1e-9)+1},(i,r)=>r*o)}var si=e=>T(e,1);function Zg(e,t){let n=e.at(-1)?.depth_mm??1,o=e.at(-1)?.volume_ml??1,i=d=>si(gr+(kd-gr)*d/n),r=d=>si(ri-(ri-Ta)*d/o),l=e.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${r(c)}`).join("");return s`<svg
      class="level-curve"
      viewBox="0 0 ${Yg} ${xd}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${t} millimetres"
    >
      ${Gg(n).map(d=>M`<path class="grid" d="M${i(d)} ${Ta}V${ri}" />
            <text x=${i(d)} y=${ri+20} text-anchor="middle">${si(d)}</text>`)}
      ${Gg(o).map(d=>M`<path class="grid" d="M${gr} ${r(d)}H${kd}" />
            <text x=${gr-8} y=${r(d)} text-anchor="end" dominant-baseline="middle">${si(d)}</text>`)}
      ${M`<text x=${(gr+kd)/2} y=${xd-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Ta+ri)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${r(0)}${l}" />
        <path class="pour-line" d="M${i(t)} ${Ta}V${ri}" />`}
    </svg>
    ${yT(e)}`}function yT(e){let t=Math.max(1,Math.round(e.length/bT)),n=e.filter((o,i)=>(i+1)%t===0);return s`<details>
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
              <th scope="row">${si(o)}</th>
              <td>${si(i)}</td>
              <td>${T(r,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Ra=Math.PI/8,vT=500,Td=class extends HTMLElement{#t=[];#n=0;#e;#i=!1;#o=!1;#r="";#s=!1;#l="";#a="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#t=t,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#l="",URL.revokeObjectURL(this.#r)}#$(t){this.#m=t,t&&requestIdleCallback(()=>{this.#w()},{timeout:1500})}async#w(){if(this.#e||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let t=this.#e||this.#o;!this.#m||!t||this.#c()===this.#l||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},vT))}#c(){let{of:t}=this.#t[this.#n],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#s&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let t=this.#c();if(t!==this.#l){try{let n=await Pt(JSON.parse(t));if(t!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#r),this.#r=URL.createObjectURL(n)):this.#e?.show(Bo(await n.arrayBuffer())),this.#l=t,this.#a=""}catch(n){if(!(n instanceof v))throw n;this.#a=n.message}this.#u()}}#_(t){t(),this.#a="Drawing ...",this.#u(),this.#p()}#u(){let t=s`<div class="choice" role="group" aria-label="What to look at">
      ${this.#t.map((o,i)=>s`<button
            type="button"
            aria-pressed=${i===this.#n?"true":"false"}
            @click=${()=>this.#_(()=>this.#n=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=s`<p class="aside" role="status">${this.#a}</p>`;ot(s`${t} ${this.#o?this.#y():this.#b()} ${n}`,this)}#b(){let t=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#s=!this.#s);return s`<canvas
        role="img"
        aria-label="${this.#t[this.#n]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-Ra)}>Turn left</button>
        <button type="button" @click=${t(Ra)}>Turn right</button>
        <button type="button" @click=${n(Ra)}>From above</button>
        <button type="button" @click=${n(-Ra)}>From below</button>
        <button type="button" aria-pressed=${this.#s?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return s`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#r?s`<img
              src=${this.#r}
              alt="${this.#t[this.#n].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",Td);function Xg(e){let{measured:t}=a;if(!t)return s`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=t.gauge.pockets[0],o=t.gauge.notes;return s`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${O({key:"mould.brimful",label:"To the brim",note:`${S(ye(a.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:ke(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:t.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${Zg(n.levels,e.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${kT(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?s`<ul class="limits">
            ${o.map(i=>s`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function kT(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return e.pipe||e.decorations?.length||e.pour.layers?.length?[o,n]:[n,o]}var xT=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function e_(e){let{batch:t}=a.printing;return Ce(e)&&t<=e.pieces.batches?t:0}function TT(e){if(!Ce(e))return u;let t=e_(e),n=i=>po({batch:Number(i.target.value)}),o=(i,r)=>s`<option value=${i} .selected=${F(i===t)}>${r}</option>`;return s`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${xT(e).map(({number:i,one:r})=>o(i,`batch ${i} of ${e.pieces.batches}: ${Nt(e,r)}`))}
      </select>
    </div>
  </div>`}function t_(e){let{paper:t}=a.printing,n=ti(a.run.file),o={file:a.run.file,run:a.run.now},i=a.measured?.mould,r={file:i,"below-brim":`${e.pour.below_brim_mm} mm`},l=e_(e),d={plan:o,paper:t,...l?{batch:String(l)}:{}};return s`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${fa()} ${TT(e)}
    <div class="choice">
      ${On({words:"Bench sheet",kind:"sheet",file:`${n}${l?` batch ${l}`:""}`,of:d},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?mt("Label draft",St(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${mt("Drawing of the pour, true size",St(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${mt("Drawing of the piece",St(`${n}.svg`,{kind:"piece",plan:o}))}
      ${mt("Whole piece, GLB (3D viewer)",St(`${n}.glb`,{kind:"glb",plan:o}))}
      ${mt("Whole piece, STL (3D printing)",St(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?s`${mt("Filled cavity, GLB (3D viewer)",St(`${n} cavity.glb`,{kind:"glb",gauge:r}))}
            ${mt("Cavity, STL (3D printing)",St(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${ei()||`The drawing has the pour line ${S(ye(a.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var n_=e=>t_(e);var ve={at:"/decorations"},ai=e=>`${ve.at}/${e}`,Mn=e=>D("run",`${ai(e)}/name`).trim()||`Decoration ${e+1}`,Ne=()=>w(a.run.now,"/cut")!==void 0,mo=e=>["mould","rod","drizzle","bought"].find(t=>g("run",`${e}/${t}`)!==void 0),_r=e=>["per_piece","per_cast"].find(t=>g("run",`${e}/${t}`)!==void 0);var et="/batch",o_=e=>`${e}/moulds_owned`;function Rd(){return P({name:"batches",pointers:[et],summary:`Batches${RT()}`,body:()=>s` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${H("run",et)}
        <div class="row">${ST()} ${PT()}</div>
        ${R({question:"Cavities at each filling",at:et,asked_at:`${et}/fill`,chosen:g("run",`${et}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:e=>i_("fill",e==="full"?e:void 0)})}`})}function RT(){let[e,t]=[`${et}/pieces`,`${et}/casts`].map(o=>D("run",o)),n=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function i_(e,t){let n=ae("run",et,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function ST(){let e=g("run",`${et}/casts`)!==void 0,t=(n,o)=>h({label:o,at:`${et}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return Ne()?g("run",`${et}/pieces`)!==void 0?s`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${AT}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function AT(){E("run","Counted in loaves",et,i_("pieces",void 0))}function PT(){let e=`${et}/whippings`;return!Ye()&&g("run",e)===void 0?u:h({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var DT={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},ft={at:"/dust"},Sa=e=>D("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function r_(){se("set-up dust"),I(ft,{name:""},"Dust")}function OT(e){return g("run",`${e}/per_piece`)!==void 0?"piece":g("run",`${e}/on_covered_surface`)===void 0?void 0:"surface"}function s_(e){let t=`/dust/${e}`,n=OT(t),o=Sa(e),i=r=>({...ae("run",t,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...DT[r]});return s` ${h({label:"Which powder",at:`${t}/name`})}
  ${R({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?h({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?s`<div class="row">
            ${h({label:"Powder on the covered surface",at:`${t}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${h({label:"Share of the surface covered",at:`${t}/coverage`,unit:"%",short:!0})}
            ${h({label:"Share of the powder that sticks",at:`${t}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${Sn("run",t,o)}`}var MT={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function FT(e){return["on_top","buried"].find(t=>g("run",`${e}/${t}`)!==void 0)??"by number"}function a_(e,t){let n=FT(e),o=i=>({...ae("run",e,["on_top","buried"]),...MT[i]});return mo(e)==="drizzle"?s`<p class="aside">A drizzle lies on the surface it covers.</p>`:mo(e)==="bought"?s`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:P({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>s` ${R({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?CT(`${e}/on_top`):n==="buried"?ET(e,t):s`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function CT(e){return s`<div class="row">
      ${h({label:"Pressed into the top",at:`${e}/pressed_in`,unit:"mm"})}
      ${h({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${l_(e,"It is turned")}`}function l_(e,t){let n=o=>h({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return P({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>s` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var LT=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function ET(e,t){let n=`${e}/buried`,o=t===k(ve).findIndex(l=>l.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),r=g("run",`${n}/placed`);return s`${H("run",n)}
  ${h({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${R({question:"When is it set in?",at:`${n}/placed`,chosen:r,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:l=>l,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${R({question:"Where in the pour?",at:e,asked_at:`${n}/arrange`,chosen:i,answers:LT,puts:l=>WT(e,l)})}
  ${i==="said"?jT(e,t):u}`}var BT=()=>s`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${M`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,u_={x:"",y:"",height:""};function WT(e,t){let n=ae("run",`${e}/buried`,["arrange","places"]);if(t!=="said")return{...g("run",e),buried:{...n,arrange:t}};let o=Number(g("run",`${e}/${_r(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>u_);return{...ae("run",e,["per_piece","per_cast"]),[d_(e)]:i.length,buried:{...n,places:i}}}var d_=e=>Ne()?"per_cast":_r(e)??"per_piece";function IT(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,l)=>A(r,`${e}/${l}`,void 0),n);return A(i,`${e}/${d_(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function jT(e,t){let n=IT(e),o=k(n);return s`${BT()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,r)=>{let l=`${n.at}/${r}`,d=c=>h({label:`Place ${r+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return s`<div class="part" id=${B(n,r)} role="group" aria-label="Place ${r+1} of ${Mn(t)}">
        ${H("run",l)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${q(n,r,`place ${r+1} of ${Mn(t)}`)}
        </div>
        ${l_(l,`Place ${r+1} is turned`)}
      </div>`})}
    ${Q(n,"Add a place",()=>I(n,u_,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var p_=e=>`${e} made`;function HT(){let e=ai(k(ve).length),t=Ne()?{}:{per_piece:""};se("set-up decorate");for(let n of[p_(e),`${e} where`])qe("run",n);I(ve,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function m_(){let[e,t]=[k(ve).length>0,k(ft).length>0];return s`${Q(ve,e?"Add another decoration":"Add a decoration",HT)}
  ${Q(ft,t?"Add another dust":"Add a dust",r_)}`}function f_(e){let t=ai(e);return s` ${H("run",t)} ${JT(t)}
    <div class="row">
      ${NT(t)} ${h({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${mo(t)==="bought"?u:qT(t)}
    </div>
    ${a_(t,e)} ${Sn("run",t,Mn(e))}`}var qT=e=>s`${h({label:"Lost in melting",at:`${e}/melt_loss`,unit:"%",short:!0})}
  ${h({label:"Left in the jug per tray fill",at:`${e}/left_in_jug`,unit:"g",short:!0})}
  ${h({label:"Density when set",at:`${e}/density`,unit:"g/ml",short:!0})}`;function NT(e){let t=_r(e),n=ce("run",`${e}/buried/places`).length;if(n&&n===g("run",`${e}/${t}`)&&!(Ne()&&t==="per_piece"))return s``;let o=t==="per_cast"?Ne()?"In each loaf":"In each cast":Ne()?"On each bar":"On each piece",i=r=>({...ae("run",e,["per_piece","per_cast"]),[r]:t?g("run",`${e}/${t}`):""});return s`${Ne()?R({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${t?h({label:o,at:`${e}/${t}`,count:!0,short:!0}):u}`}var UT={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},c_={density:"",melt_loss:"",left_in_jug:""};function zT(e,t){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...t==="drizzle"||t==="bought"?["on_top","buried"]:[],...t==="bought"?[...Object.keys(c_),"time_per_tray_fill"]:[]],o=mo(e)==="bought"&&t!=="bought"?c_:{};return{...ae("run",e,n),...o,...UT[t]}}function JT(e){let t=mo(e),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${e}/${o}`);return P({name:p_(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>s` <div class="row">
          ${h({label:"What it is called",at:`${e}/name`})}
          ${h({label:t==="bought"?"What is bought":"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">${t==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${R({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>zT(e,o)})}
        ${t?VT[t](e):u}
        ${t==="bought"?u:h({label:"To fill all trays once, setting included",at:`${e}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var VT={mould:KT,rod:e=>s`<div class="row">
      ${h({label:"Rod, diameter",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${h({label:"Rod, length",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>s`<div class="row">
      ${h({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${h({label:"Thickness",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:e=>h({label:"One weighs",at:`${e}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function KT(e){let t=g("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return s`${zo("Cast in",`${e}/mould`,a.files?.moulds)}
  ${R({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?h({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):h({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${R({question:"What makes one?",at:`${e}/cast_as`,chosen:g("run",`${e}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}function h_(){let e="/lye_pot",t=g("run",e)!==void 0;return!t&&!Ye()?u:s`<div class="labelled">
      ${nu(e,"Make one pot of lye solution for both",t,{})}${nn("lye_solution")}
    </div>
    ${vt("lye_solution")}
    ${t?h({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function g_(e){let t={at:"/bottles"},n=k(t);return P({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>s` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${e&&ue(e)?` Weights are of ${ue(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${t.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return s`<div class="part" id=${B(t,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${q(t,i,l)}
            </div>
            ${H("run",r)}
            <div class="row">
              ${h({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${h({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${e?QT(e,i,l):u}
          </div>`})}
        ${Q(t,"Use up a bottle",()=>I(t,{name:"",holds:""},"bottle"))}`})}function QT(e,t,n){let o=e.bottles?.[t];return o?.name!==n?u:o.parts.map((i,r)=>O({key:`bottle.${t}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${T(i.percent_of_batter,2)} % of the batter`,shown:le(a.units,Oe(i,"")),size:"weigh",of:`${e.place}.bottles.${t}.parts.${r}.g`}))}var $r="/label",Ad=()=>g("run",$r)!==void 0;function __(){let t=g("studio",li.studio)!==void 0?{weight_spread:""}:{market:""};se("set-up label"),E("run","Label added",$r,t,j("lane-label"))}function $_(){return s`${H("run",$r)} ${GT()}
    <button type="button" @click=${()=>E("run","Label removed",$r,void 0)}>Remove the label</button>`}var li={run:"/label/market",studio:"/label/market"};function Pd(){let{of:e,at:t}=Xi(li);return s`${R({of:e,question:"Where it is sold",at:e==="run"?$r:t,asked_at:t,chosen:g(e,t)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>e==="run"?YT(n):n})}
  ${An("Where it is sold",[li])}`}function GT(){let e=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return s`${Pd()}
  ${R({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:e,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:ZT})}
  ${e==="weighed"?XT():s`<div class="row">
          ${h({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${h({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${h({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${zt(li)==="EU"||g("run",Sd)!==void 0?nu(Sd,"With the e mark",g("run",Sd)===!0,!0):u}`}var Sd="/label/e_mark";function YT(e){return{...ae("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function ZT(e){let t=ae("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return e==="weighed"?{...t,weighed_pieces:["","",""]}:t}function XT(){let e={at:"/label/weighed_pieces",least:3};return s`<div class="trials">
      ${k(e).map((t,n)=>s`<div class="row" id=${B(e,n)}>
            ${h({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${q(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${Q(e,"One more piece",()=>I(e,"","piece"))}`}function w_(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,r=e.batches.map(c=>`${au(e)?`${c.count} of `:""}${Nt(e,c)}`),l=`Made in ${t} batches${au(e)?": ":" of "}${sn(r)}; ${Ps(n,o)}.`,d=e.batch_limits.filter(c=>c.sets);return s`<div class="batches-told of-plan">
    ${Ce(e)?s`<p><b>${l}</b></p>`:u}
    ${i>0?s`<p>
            ${Z(i,e.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?s`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${e.around.length?s`<p><span class="called">One fewer, one more:</span> ${e.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var b_=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function y_(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.decorations?.find(c=>!c.buried&&c.cavity_fills>0),r=i?T_(i):0,l=i?i.on_top?.stands_proud_mm??1.9*r:0,d=e.pipe?e0(e,t,n,l):0;return{brim:n,line:o,topping:d,ball:r,proud:l,top:Math.max(n,(e.pipe?n:o)+d+l)}}function e0(e,t,n,o){let i=yt(w(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(e.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[l,d]=Ll(t,t.brim-.01),c=Math.PI/4*(d-l)**2;return 1500*e.pipe.visible_each_ml/c}function Dd(e,t){let[n,o]=Ll(e,e.brim-.01),i=(n+o)/2,r=3,l=m=>(o-n)/2*Math.sqrt(1-(m/(r+.3))**2),d=m=>-(t.brim+t.topping*m/r),c=(m,_,$)=>{let y=i+$*(Math.max(l(m),l(_))+(o-n)*.035);return`C${y} ${d(m)} ${y} ${d(_)} ${i+$*l(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<r;++m)p+=c(m,m+1,-1);p+=`L${i+l(r)*.94} ${d(r)}`;for(let m=r;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var wr=(e,t)=>e===t?`shaded ${t}`:"plain";function Fn(e,t,n=u){return s`${v_(e,t,n)}
  ${e==="decorate"&&Od(t)?s`<p class="hint">${Od(t)}</p>`:u}`}var Cn=(e,t)=>s`<div class="small-view">${v_(e,t,u)}</div>`;function v_(e,t,n){let o=a.measured?.outline;if(!o)return s`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=y_(t,o),r=o.right-o.left,l=Math.max(6,r*.1),d={x:o.left-l,y:-i.top-l,w:r+2*l,h:i.top+2*l};return s`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${d0(e,t)}>
      ${t0(e)} ${n0(e,t,o,i)} ${i0(e,t,o,i)} ${r0()}
      ${s0(e,t,o,i)} ${u0(e,t,o,i)}
      ${M`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function k_(e,t){let n=a.measured.outline,o=y_(e,n),i=n.right-n.left,r=Math.max(6,i*.1),l=o.top+2*r;return{share:(o.top+r-t)/l,per_mm:1/l,w:i+2*r,h:l}}function t0(e){return M`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${b_(x_())} /></clipPath>
  </defs>`}function x_(){let e=a.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function n0(e,t,n,o){let i=e==="cut"?"pour":e,r=t.pour.layers??[],l=(r.length?r.map(d=>o0(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return M`<g clip-path="url(#cavity-${e})">${l.map((d,c)=>M`<path class="whole" d=${d} /><path class="${wr(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?M`<path fill="url(#hatch-${e})" d=${d} />`:u}`).reverse()}</g>`}function o0(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function i0(e,t,n,o){if(!t.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String(w(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,l=(n.left+n.right)/2;return M`<g clip-path="url(#cavity-${e})"><rect class=${wr(e,"pipe")} x=${l-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function r0(){return M`<path class="wall" fill-rule="evenodd" d=${b_(x_())} />`}function s0(e,t,n,o){let i=(n.left+n.right)/2,r=t.pipe?o.brim:o.line,l=t.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return M`
    ${t.pipe?M`<path class=${wr(e,"pipe")} d=${Dd(n,o)} />${e==="pipe"?M`<path fill="url(#dots-pipe)" d=${Dd(n,o)} />`:u}`:u}
    ${e==="dust"?a0(t,n,o):u}
    ${o.ball?M`<circle class=${wr(e,"decorate")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:d,one:c,i:p})=>l0(wr(e,"decorate"),i,d,c,p))}`}function a0(e,t,n){let o=`M${t.left} ${-n.line}H${t.right}`;return M`<path class="powder" d=${e.pipe?Dd(t,n):o} />`}function l0(e,t,n,o,i){let[r,l]=[t+n.middle_mm[0],n.middle_mm[2]],d=yt(w(a.run.now,`/decorations/${i}/rod/diameter`)),c=yt(w(a.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return M`<circle class=${e} cx=${r} cy=${-l} r=${T_(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),$=d/2*Math.sqrt(1-_*_),y=c*_+2*$,x=-180/Math.PI*Math.atan2(m,p);return M`<rect class=${e} x=${-y/2} y=${-d/2} width=${y} height=${d} rx=${$} ry=${$?d/2:0}
    transform="translate(${r} ${-l}) rotate(${x})" />`}var T_=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function Od(e){let t=(e.decorations??[]).filter((n,o)=>w(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function u0(e,t,n,o){if(e!=="cut"||!t.cut)return u;let i=Math.max(t.cut.rows,t.cut.columns);return M`${Array.from({length:i-1},(r,l)=>{let d=n.left+(n.right-n.left)*(l+1)/i;return M`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function d0(e,t){let n=S(ye(a.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${Od(t)}`.trim()}var c0=e=>`set-up ${e}`;function Ue({name:e,title:t,drawing:n,result:o,about:i,form:r}){let l=c0(e),d=()=>lt({part:t,fold:l},r);if(ro())return s`${d()}`;i.some(([m,_])=>He(m,_))&&se(l);let c=a.open.has(l),p=Uo().filter(({folds:m})=>m.includes(l)).length;return s`<section class="lane ${e} ${c?"is-open":""}" aria-labelledby="lane-${e}">
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
        @click=${()=>Ee("open",l)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?s`<div class="lane-body">${d()}</div>`:u}
  </section>`}var me=e=>s`<p class="order ${a.is_old&&a.plan?"old":""}">${e}</p>`;var R_=()=>k(ve).length>0,S_=()=>k(ft).length>0;function A_(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function P_(e){let t=e?k(ve).flatMap((n,o)=>M_(e,o)??[]):[];return Ue({name:"decorate",title:"Decorate",drawing:e&&(()=>Cn("decorate",e)),result:t.length?t.map(n=>f0(e,n)):me(D_(ve,Mn)),about:[["run",ve.at]],form:()=>s`${e?s`<div class="side">${Fn("decorate",e)}</div>`:u}
        <div class="weights">${e?k(ve).map((n,o)=>p0(e,o)):u}</div>
        ${F_(ve,Mn,f_)}`})}var D_=(e,t)=>`${k(e).map((n,o)=>t(o)).join(", ")}, not yet with figures.`;function p0(e,t){let n=M_(e,t);return n?h0(e,n,t):u}function O_(e){let t=e?.dust?.length?k(ft).map((n,o)=>_0(e,o)):void 0;return Ue({name:"dust",title:"Dust",drawing:e&&(()=>Cn("dust",e)),result:t??me(D_(ft,Sa)),about:[["run",ft.at]],form:()=>s`<div class="side">${e?Fn("dust",e):u}</div>
        <div class="weights">${e?k(ft).map((n,o)=>$0(e,o)):u}</div>
        ${F_(ft,Sa,s_)}`})}var M_=(e,t)=>A_(e.decorations,k(ve),D("run",`/decorations/${t}/name`),t);function F_(e,t,n){return s`<div class="all-questions">
    ${k(e).map((o,i)=>s`<section class="questions" id=${B(e,i)} aria-labelledby="${B(e,i)}-title">
          <div class="part-head">
            <h3 id="${B(e,i)}-title">${t(i)}</h3>
            ${q(e,i,t(i))}
          </div>
          ${lt({part:t(i)},()=>n(i))}
        </section>`)}
  </div>`}function m0(e,t){return s`<h3>${e.name}</h3>
    ${O({key:`decorations.${t}.count`,label:"Bought, spares included",shown:[String(e.casts),""],of:`decorations.${t}.casts`})}`}function f0(e,t){if(t.bought)return me(s`<b>${t.casts}</b> × ${t.name}, bought.`);let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"",o=S(le(a.units,Oe(t,"make_")));return me(s`Cast <b>${t.casts}</b> of ${t.name} ahead${n}, from <b>${o}</b> of
      ${t.material}${Ce(e.whole)?", for the whole run":""}.`)}function h0(e,t,n){return t.bought?m0(t,n):s`<h3>${t.name} ${Ce(e.whole)?s`<small>for the whole run</small>`:u}</h3>
    ${O({key:`set-up.decorations.${n}.make`,label:`Melt of ${t.material}`,shown:le(a.units,Oe(t,"make_")),of:`decorations.${n}.make_g`})}
    ${O({key:`decorations.${n}.each`,label:"Each weighs",note:`${T(t.volume_each_ml,2)} ml`,shown:C(a.units,t.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${t.casting_s?s`<p>${xn(t.casting_s)} of casting.</p>`:u} ${g0(t,n)}`}function g0(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return u;let i=l=>l===null?"not known":S(ye(a.units,l)),r=l=>{let d=(o?.embeds??[]).map(l).filter(c=>c!==null);return d.length?S(ye(a.units,Math.min(...d))):"nothing near"};return s`<h4>Fit of ${e.name}</h4>
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
                <dd>${T(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${oo(`decorations.${t}.fit`,"How the fit is measured",`decorations.${t}.${n?"on_top":"buried"}`)}`}function _0(e,t){let n=C_(e,t);if(!n)return u;let o=ue(e);return me(s`<b>${S(le(a.units,Oe(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var C_=(e,t)=>A_(e.dust,k(ft),D("run",`/dust/${t}/name`),t);function $0(e,t){let n=C_(e,t);if(!n)return u;let o=g("run",`/dust/${t}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,r=O({key:`set-up.dust.${t}`,label:n.name,note:ue(e),shown:le(a.units,Oe(n,"")),of:`${e.place}.dust.${t}.g`});return s`${r}${i?s`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function L_(e){let t=e?.cut;return Ue({name:"cut",title:"Cut",drawing:e&&(()=>Cn("cut",e)),result:t?w0(e,t):me("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>s`${t?b0(e,t):u}
        <div class="all-questions">${Mh()}</div>`})}var w0=(e,t)=>me(s`Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}; a bar is
      ${S(C(a.units,e.piece.fresh_g))} on average, fresh.`);function b0(e,t){return s`<div class="side">${Fn("cut",e)}</div>
    <div class="weights">
      ${O({key:"cut.bar",label:"A bar on average, fresh",note:y0(t),shown:C(a.units,e.piece.fresh_g),of:"cut.bars_each"})}
      ${O({key:"cut.offcuts",label:"Offcuts",shown:C(a.units,t.offcuts_g),of:"cut.offcuts_g"})}
      ${v0(t)}
    </div>`}function y0(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${T(n,1)} to ${T(o,1)} g`}function v0(e){return e.one_more?.length?s`<ul class="limits">
    ${e.one_more.map(t=>s`<li>Cut to ${t.size_text} along ${t.direction}: ${t.bars} bars from each.</li>`)}
  </ul>`:u}function E_(e){return Ue({name:"label",title:"Label",drawing:x0,result:me(k0(e)),about:[["run","/label"]],form:()=>s`<div class="more">${$_()} ${e?vd(e):u}</div>`})}function k0(e){let t=e?.piece.label_g;return!e?.label||t===null||t===void 0?"A draft of the label, not yet with figures.":s`Net weight for the label <b>${S(C(a.units,t,0))}</b>, sold in the ${e.label.market}.`}var x0=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${M`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var En="/pour/layers",Ln={at:En,in_order:!0},Md=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Pa=()=>k(Ln);function T0(){let e=t=>Pa().some(n=>t in n);return Md.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function W_(e){let t=Pa(),n=T0();return t.length?s`<h3>
      Layers, lowest first ${e&&ue(e)?s`<small>${ue(e)}</small>`:u}
    </h3>
    ${R({question:"All of them by",at:En,is_told_elsewhere:!0,chosen:n,answers:Md,puts:o=>S0(o,e)})}
    <div class="items">${t.map((o,i)=>A0(o,i,n,e))}</div>
    ${Q(Ln,"One more layer on top",()=>I(Ln,{name:R0(t),[n]:""},"layer"))}`:s`<p class="choice">
      ${Q(Ln,"Pour it in layers",()=>I(Ln,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function R0(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function I_(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function S0(e,t){let n=Pa(),o=a.is_old?void 0:t,i=(r,l)=>{let d=I_(o,r,l);return e==="parts"||!d||e==="depth"&&"tilted"in r?"":e==="depth"?`${T(d.to_mm-d.from_mm,3)} mm`:`${T(d.mass_each_g,3)} g`};return n.map((r,l)=>{let d=Aa(l),c=e!=="parts"&&n.length>1&&l===n.length-1;return{...d,...c?{rest:!0}:{[e]:i(r,l)}}})}var Aa=e=>ae("run",`${En}/${e}`,[...Md.map(([t])=>t),"rest"]);function A0(e,t,n,o){let i=`${En}/${t}`,r=String(e.name)||`Layer ${t+1}`,l=I_(o,e,t);return s`<div class="part" id=${B(Ln,t)} role="group" aria-label="Layer ${r}">
    ${l&&o?P0(o,l,t):s`<p class="part-title">${r}</p>`} ${H("run",i)}
    ${O0(e,t,n,r)}
    ${o&&l?l.colours.map((d,c)=>D0(o,d,t,c)):u}
    ${P({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>s` ${h({label:"Name of the layer",at:`${i}/name`})} ${L0(i,r)} ${E0(i,t)}
        ${q(Ln,t,r)}`})}
  </div>`}function P0(e,t,n){return O({key:`pour.layer.${n}`,label:t.name,note:`${Kl(ye(a.units,t.to_mm-t.from_mm))} thick, ${Kl(C(a.units,t.mass_each_g))} each`,shown:t.g_text===void 0?C(a.units,t.g):le(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.g`})}function D0(e,t,n,o){return O({key:`pour.layer.${n}.${o}`,label:t.name,note:t.teaspoons?`about ${T(t.teaspoons,1)} tsp`:"",shown:lo(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.colours.${o}.g`})}function O0(e,t,n,o){if(n==="parts")return M0(e,t,o);let i="rest"in e;return s`${i?u:h({label:`${o}, ${n}`,at:`${En}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?C0(t,n):F0(t,n)}
    >
      Takes the rest
    </button>`}function M0(e,t,n){let o=`${En}/${t}/parts`,i=r=>()=>{f({typed:void 0}),V("run",o,Math.max(1,(Number(e.parts)||0)+r))};return s`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${h({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function F0(e,t){let n=Pa().map((o,i)=>i===e?{...Aa(i),rest:!0}:o.rest?{...Aa(i),[t]:""}:o);E("run","takes the rest",En,n)}function C0(e,t){let n=`${En}/${e}`;E("run","amount of the layer",n,{...Aa(e),[t]:""},te("run",`${n}/${t}`))}function L0(e,t){let n={at:`${e}/colours`,in_order:!0};return s`${k(n).map((o,i)=>{let r=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return s`<div class="part" id=${B(n,i)} role="group" aria-label="${l} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${q(n,i,l)}
      </div>
      ${H("run",r)}
      <div class="row">
        ${h({label:"Colour",at:`${r}/name`})}
        ${h({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${h({label:"Bulk density (for spoons)",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${Sn("run",r,l)}
    </div>`})}
  ${Q(n,"Add a colour",()=>I(n,{name:"",rate:""},"colour"))}`}var B_=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function E0(e,t){let n=`${e}/tilted`,o=g("run",`${n}/low_side`);return t===k(Ln).length-1&&g("run",n)===void 0?s`<p class="hint">The last layer is poured level.</p>`:xt({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>s`${h({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${R({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:B_,puts:r=>r})}
        ${P({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!B_.some(([r])=>r===o),body:()=>h({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var At=()=>w(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function Fd(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=At()==="depth"?n-o:o;f({typed:void 0}),V("run",`/pour/line/${At()}`,`${T(i,2)} mm`)}function j_(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=yt(w(a.run.now,`/pour/line/${At()}`));return n===void 0?e.pour.below_brim_mm:At()==="depth"?t-n:n}function B0(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=l=>t((l.clientY-e.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,r)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,r)}function W0(e){if(!a.measured)return u;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=j_(e),{share:o,h:i}=k_(e,t-n),r=c=>B0(c,p=>Fd(e,n+p*i)),l=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),Fd(e,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),s`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${T(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${S(ye(a.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function I0(e){let{pour:t}=e,n=S(ye(a.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each",r=ue(e);return me(s`${o}, <b>${S(C(a.units,t.mass_each_g))}</b> ${i}; make
      <b>${S(C(a.units,t.make_g))}</b>${r?` for ${r}`:""}.`)}var H_=()=>At()==="depth"?"Depth":"Below brim";function q_(e){return Ue({name:"pour",title:"Pour",drawing:e&&(()=>Cn("pour",e)),result:e?I0(e):me(`${j0()}.`),about:[["run","/pour"]],form:()=>s`${e?H0(e):q0()}
        <div class="more">${Da("pour")} ${W_(e)} ${Ns("pour")}</div>`})}function j0(){let e=D("run",`/pour/line/${At()}`);return e?`${e} ${At()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function H0(e){let{pour:t}=e,n=`${e.place}.pour`,o=i=>()=>Fd(e,j_(e)+i);return s`<div class="side">
      ${Fn("pour",e,W0(e))} ${N_(e)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${h({label:H_(),at:`/pour/line/${At()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${O({key:"pour.each",label:"Weigh into each",shown:C(a.units,t.mass_each_g),note:`${T(t.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${O({key:"pour.mm",label:"1 mm more or less",shown:ke(a.units,t.ml_per_mm,2),note:`${Et(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${O({key:"set-up.pour.make",label:"Base to make",note:ue(e),shown:C(a.units,t.make_g),of:`${n}.make_g`})}
      ${O({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var q0=()=>s`<div class="side">
    ${N_()} ${H("run","/pour/line")}
    ${h({label:H_(),at:`/pour/line/${At()}`,unit:"mm"})}
  </div>`,Da=e=>s`<button type="button" @click=${()=>st(e)}>
    Change the formula of the ${e==="pour"?"base":"topping"}
  </button>`;function N_(e){let t=n=>{if(n===At())return;let o=e&&!a.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;E("run","pour line","/pour/line",{[n]:o===void 0?"":`${T(o,3)} mm`})};return oe("The pour line is measured",At(),[["below_brim","From the brim"],["depth","From the floor"]],t)}var N0=[0,50,80,100];function U_(e){let t=e?.pipe;return Ue({name:"pipe",title:"Pipe",drawing:t&&(()=>Cn("pipe",e)),result:t?U0(e,t):me("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>t?z0(e,t):J0()})}function U0(e,t){let n=ue(e);return me(s`Pipe <b>${T(t.volume_each_ml,0)} ml</b> on each, ${S(C(a.units,t.mass_each_g))} at this
      whipped density; make <b>${S(C(a.units,t.make_g))}</b>${n?` for ${n}`:""}.`)}function z0(e,t){return s`<div class="side">
      ${Fn("pipe",e)}
      ${O({key:"pipe.each",label:"Topping on each",shown:ke(a.units,t.volume_each_ml),note:`${T(t.in_headspace_each_ml,1)} ml of it below the brim`,of:`${e.place}.pipe.volume_each_ml`})}
      ${O({key:"set-up.pipe.make",label:"Topping to make",note:ue(e),shown:C(a.units,t.make_g),of:`${e.place}.pipe.make_g`})}
      ${O({key:"pipe.density",label:"Whipped density",note:`overrun ${T(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],of:`${e.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${Da("pipe")}
    </div>
    <div class="weights">${Cu(t)} ${K_()} ${V0(e)} ${X0(e)}</div>
    <div class="more">${Fu(t)} ${Mu()}</div>`}var br=e=>e===0?"pipe":`pipe.whipping${e}`,yr=(e,t)=>`${e.place}.pipe.whippings.${t}`;function z_(e,t){let n=As(e,t);return n?s`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function J0(){return s`<div class="more">${Fu()}</div>
    <div class="side">${K_()} ${g("run","/pipe/whip_now")===void 0?u:V_()}</div>
    <div class="weights">${Cu()} ${Da("pipe")}</div>
    <div class="more">${Mu()}</div>`}var J_=e=>ue(e)?s`<small>${ue(e)}</small>`:u;function V0(e){return s`<h3>Today's bowl ${J_(e)}</h3>
    ${V_()} ${e.whippings.map((t,n)=>K0(e,t,n))}`}function K0(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,r=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${t.pieces} to make.`;return s`${z_(e,t)}
  ${o==null?u:O({key:`${br(n)}.now`,label:"Enough for",note:r,shown:[Z(o,"piece"),""],size:"weigh",of:`${yr(e,n)}.pieces_now`})}
  ${G0(e,t,n)}`}function V_(){let e=g("run","/pipe/whip/holds"),t=e===void 0?ir():{holds:e,net:""};return xt({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:t,body:Q0})}function Q0(){return s`<div class="row">
    ${h({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${rr("/pipe/whip_now")}
  </div>`}function G0(e,t,n){return t.readings?.length?P({name:`${br(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>Y0(e,t,n)}):u}function Y0(e,t,n){return s`<table class="readings">
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
              <th scope="row">${T(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${T(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${oo(`${br(n)}.readings`,"Show the calculation",`${yr(e,n)}.readings`)}`}function K_(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(D("run",e))?.[1]?.replace(",",".")),n=He("run",e);return s`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${Tn("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${N0.map(o=>s`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>V("run",e,`${o} %`)}
          >
            ${Z0(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${h({label:"Headspace filled, as a share",at:e,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function Z0(e){let t=52*(e/100);return s`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${M`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function X0(e){let t=e.whippings.map(i=>({one:i,words:eR(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?u:s`<h3>Limits of whisk, bowl and time ${J_(e)}</h3>
    ${t.map(({one:i,words:r})=>s`${z_(e,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>s`<li class=${i.sets?"binds":""}>
            ${i.sets?s`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${oo("pipe.limits","How the limits come about",`${yr(e,0)}.limits`)}`}function eR({piping_s:e,lye_spoonfuls:t}){return[e?`${xn(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${xn(t.altogether_s)}`:""].filter(Boolean).join("; ")}function G_(e){return Ue({name:"lye",title:"Lye",drawing:nR,result:e?Q_(e).map(tR):me("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>s`${e?s`<div class="more jugs">${Q_(e).map(oR)} ${rR(e)}</div>`:u}
        <div class="more">${h_()} ${g_(e)}</div>`})}function Q_(e){let{pieces:t}=e.batch,n={slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,place:`${e.place}.pour`,pieces:t,key:"pour"},o=e.whippings.map((i,r)=>{let l=As(e,i);return{slot:"pipe",title:`Lye for the topping${l&&`, ${l}`}`,batter:i,place:yr(e,r),pieces:t,key:br(r)}});return[n,...o]}function tR({title:e,batter:t,slot:n,pieces:o}){let i=vn(n,o).length?" \u26A0":"";return me(s`${e}: ${T(t.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${at(t.superfat_percent.effective)}${i}</b>.`)}var nR=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${M`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function oR({slot:e,title:t,batter:n,place:o,pieces:i,key:r}){let{effective:l}=n.superfat_percent,d=vn(e,i).length>0,c=`danger-set-up-${r.replaceAll(".","-")}`,p=r===e;return s`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${O({key:`set-up.${r}.strength`,label:"Lye strength",note:`water ${T(n.water_to_pure_alkali,2)} : 1 to alkali; water ${T(n.water_percent_of_fats,1)} % of the fats`,shown:[`${T(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${O({key:`set-up.${r}.superfat`,label:"Superfat as weighed",shown:[`${at(l)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:r==="pour"?"superfat_as_weighed":void 0})}
    ${zi(e,c,i)} ${Y_(n.superfat_percent)} ${iR(n,o,r)}
    ${!p||g(e,"/superfat")===void 0?u:h({label:"Planned superfat",of:e,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:a.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Y_(e){let{low:t,high:n,likely_low:o,likely_high:i,uncertainties:r}=e,l=`It lies between ${at(t)} and ${at(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${at(o)} and ${at(i)}.`,c=r[0],p=c?s` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return Vl(t)?s`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:s`<p class="aside of-plan">${l}${d} Some fat is left over even at the lowest.${p}</p>`}function iR(e,t,n){return e.heat?s`${Z_(e.heat)} ${oo(`${n}.heat`,"How the heat is worked out",`${t}.heat`)}`:u}function Z_(e){let t=i=>S(yf(a.units,i)),n=e.cooling.map(i=>`${i.shortest_min*60?xn(i.shortest_min*60):"at once"} to ${xn(i.longest_min*60)} in ${i.in}`),o=e.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at ${t(e.boils_at_c)}.`;return s`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function rR(e){let t=e.lye_pot;if(!t)return u;let{units:n}=a,o=(i,r,l,d,c="")=>O({key:`pot.${i}`,label:r,note:c,shown:l,size:"weigh",of:`${e.place}.lye_pot.${d}`});return s`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${T(t.strength_percent,1)} %${ue(e)&&`; ${ue(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",le(n,Oe(t,"water_")),"water_g")}
    ${t.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,le(n,Oe(i,""),"down"),`alkalis.${r}.g`))}
    ${o("lye","Lye solution in the pot",le(n,Oe(t,"lye_")),"lye_g",sR(t))}
    ${t.shares.map((i,r)=>s`${o(`share.${r}`,`Out of it for ${i.batter}`,le(n,Oe(i,"lye_"),"down"),`shares.${r}.lye_g`,`superfat then ${at(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,le(n,Oe(i,"top_up_")),`shares.${r}.top_up_g`):u}
        ${zi(r===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?Y_(i.superfat):u}`)}
    ${t.left_g?s`<p class="aside of-plan">
            ${S(le(a.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${t.heat?Z_(t.heat):u}
  </div>`}function sR(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=Oe(e,"lye_"),i=le(a.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${S(i)} with the pot: make up with water to that after cooling`}var vr=new Map,aR=()=>vr.clear(),lR=e=>typeof e?.owned=="number"?e.owned:void 0;function Cd(e){let t=je(e,a.files?.moulds);return vr.has(t)||(vr.set(t,void 0),uR(t)),vr.get(t)}async function uR(e){try{vr.set(e,lR(he((await Re(e)).text))),N()}catch(t){if(!(t instanceof v))throw t}}async function X_(e,t){let n=Cd(e);n!==void 0&&(V("studio",t,n),W(`${n} kept in the studio`),await dR(je(e,a.files?.moulds)),re())}async function dR(e){let t=await Pe(Ie,e);t.shipped||t.theirs||(be(t,A(t.now,"/owned",void 0)),await Ft(t),aR())}var cR={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},e$=e=>({run:e,studio:e}),Ld=e=>e$(`/losses/${e}`);function Ed(e,t){return cR[e].map(({name:n,label:o,unit:i,optional:r})=>Te(e$(`/losses/${e}/${n}`),{label:t?`${t}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:r}))}var Kt=()=>a.plan?.piece.cost?.materials.map(e=>e.name)??[],fe=e=>a.fats.find(t=>t.id===e)?.name??e,Bd=8;function kr({key:e,label:t,offers:n,taken:o,take:i}){let r=`find-${e}`,l=a.finding?.key===e?a.finding.text:"",d=(l.trim()?pR(l):n).filter($=>!o($)),c=$=>{f({finding:void 0}),i($)},p=l.trim(),m=p!==""&&!o(p)&&!d.some($=>Be(fe($))===Be(p)),_=()=>{if(!p)return;let $=d.find(x=>Be(fe(x))===Be(p)||Be(x)===Be(p)),y=d.length===1?d[0]:void 0;($??y??m)&&c($??y??p)};return s`<div class="picker" role="group" aria-labelledby="${r}-label">
    <p class="question" id="${r}-label">${t}</p>
    <div class="field">
      <label for=${r}>Find it by its name</label>
      <input
        id=${r}
        .value=${l}
        @input=${$=>f({finding:{key:e,text:$.target.value}})}
        @keydown=${$=>{$.key==="Enter"&&_()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${d.slice(0,Bd).map($=>s`<button type="button" @click=${()=>c($)}>${fe($)}</button>`)}
      ${m?s`<button type="button" @click=${()=>c(p)}>Add "${p}"</button>`:u}
    </div>
    ${d.length>Bd?s`<p class="hint">${d.length-Bd} more: type a part of the name.</p>`:u}
  </div>`}function pR(e){let t=Kt(),n=Be(e).split(/\s+/).filter(Boolean),o=a.fats.filter(r=>tn(r,e)!==void 0).map(({id:r})=>r),i=r=>n.every(l=>Be(fe(r)).includes(l));return[...new Set([...t.filter(r=>i(r)||o.includes(r)),...o])]}var tt=(e,t)=>Object.keys(g(e,t)??{}),t$=(e,t)=>`${ee(e,t)}-name`;function Id({of:e,at:t,label:n,add:o,blank:i,then:r}){let l=t$(e,t),d=()=>{let c=document.getElementById(l),p=c.value.trim();if(!p)return c.focus();if(c.value="",tt(e,t).includes(p))return Rn(r(p)());E(e,`${p} added`,`${t}/${J(p)}`,i,r(p))};return s`<div class="row">
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
  </div>`}var Wd;function jd({of:e,at:t,name:n,label:o,also:i=r=>r}){let r=`${ee(e,t)}-${tt(e,t).indexOf(n)}-called`,l=c=>{let p=c.target,m=p.value.trim(),_=m!==n&&tt(e,t).includes(m);if(Wd=_?{id:r,words:`Another is called ${m} already`}:void 0,!m||_||m===n)return p.value=n,N();on(e,`${n} is called ${m}`,$=>i(mR($,t,n,m),m),j(r))},d=Wd?.id===r?Wd.words:void 0;return s`<div class="field ${d?"wants":""}">
    <label for=${r}>${o}</label>
    <input
      id=${r}
      .value=${F(n)}
      @change=${l}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${d?"true":"false"}
      aria-describedby=${d?`${r}-said`:u}
    />
    ${xe(r,d)}
  </div>`}function mR(e,t,n,o){let i=Object.entries(w(e,t)??{}).map(([r,l])=>[r===n?o:r,l]);return A(e,t,Object.fromEntries(i))}function xr(e,t,n,o=n){let i=r=>tr(A(r,`${t}/${J(n)}`,void 0),t);return s`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>on(e,`${o} removed`,i,j(t$(e,t)))}
    >
      ×
    </button>
  </div>`}var Hd={holds:"",paid:""},Oa=e=>({of:"studio",at:`/packs/${J(e)}`,in_order:!0,and:(t,n)=>n?t:tr(t,"/packs")});function fR(e){let t=a.fats.find(n=>n.id===e||n.name===e);return t?[t.id,t.name,t.inci,...t.also_called]:[e]}function n$(e,t){let n=new Set(fR(t).map(o=>o.toLowerCase()));return tt("studio",e).find(o=>n.has(o.toLowerCase()))}var fo=e=>n$("/packs",e),o$=e=>Kt().includes(e)||a.fats.some(t=>t.id===e)?"g":void 0,i$="money packs";function r$(e){return s`${tt("studio","/packs").map(t=>hR(t,e))}
  ${kr({key:"pack",label:"Which material comes in packs?",offers:Kt(),taken:t=>fo(t)!==void 0,take:Ma})}`}function hR(e,t){let n=Oa(e),o=fe(e);return s`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${k(n).map((i,r)=>gR(n,r,o,o$(e),t))}
    <div class="row">
      ${Q(n,s`Another pack of ${o}`,()=>I(n,Hd,`A pack of ${o}`))}
      ${h({of:"studio",label:"Lost beside the batch",at:`/waste/${J(e)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
    </div>
  </div>`}function gR(e,t,n,o,i){let r=`${e.at}/${t}`,l=(c,p,m={})=>h({of:"studio",label:p,at:`${r}/${c}`,short:!0,...m}),d=g("studio",`${r}/density`)!==void 0||He("studio",`${r}/holds`);return s`<div class="row" id=${B(e,t)} role="group" aria-label="Pack ${t+1} of ${n}">
    ${l("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${l("paid","Paid for it",{told:i})} ${_R(r)}
    ${l("as_of","Day of the price",{optional:!0,date:!0})}
    ${d?l("density","Density of what it holds",{unit:"g/ml",optional:!0}):u}
    ${q(e,t,`pack ${t+1} of ${n}`)}
  </div>`}function _R(e){let t=`${e}/from`,n=tt("studio","/sellers");return n.length?ge({label:"From",of:"studio",at:t,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):h({of:"studio",label:"From",at:t,optional:!0,short:!0})}function Ma(e){let t=`/packs/${J(e)}`,[n,o]=[`/prices/${J(e)}`,`/money/prices/${J(e)}`],i=oi().length?g("run",o):void 0,r=[i,g("studio",n)].flatMap(wR),l=r.length?[...r,Hd]:[Hd];gn([["studio",c=>$R(A(nr(c,[n]),t,l))],...i!==void 0?[["run",c=>nr(c,[o])]]:[]]),W(r.length?`The price of ${fe(e)} is its first pack now`:`${fe(e)} added`),qe("studio",i$),K(kt(B(Oa(e),l.length-1)))}var $R=e=>w(e,"/currency")?e:A(e,"/currency",ga());function wR(e){let t=w(e,"/paid");if(!t)return[];let n=w(e,"/confirmed");return[{holds:w(e,"/for")??"",paid:t,...n===void 0?{}:{confirmed:n}}]}var s$=e=>s`<button
    type="button"
    aria-label="Another pack size of ${fe(e)}"
    @click=${()=>Ma(e)}
  >
    Another pack size
  </button>`;function a$(e){let t=fo(e),n=ce("studio",Oa(t).at).length,o=()=>{qe("studio",i$),K(kt(B(Oa(t),0)))};return s`<div class="row">
    <p>${fe(e)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${fe(e)}" @click=${o}>To its packs</button>
  </div>`}function l$(){let e=t=>`/have/${J(t)}`;return s`${tt("studio","/have").map(t=>{let n=o$(t),o=n?void 0:"Such as 12 pieces, or 1 kg";return s`<div class="row">
      ${h({of:"studio",label:fe(t),at:e(t),unit:n,hint:o,short:!0})}
      ${xr("studio","/have",t,fe(t))}
    </div>`})}
  ${kr({key:"have",label:"Which material stands on the shelf?",offers:Kt(),taken:t=>n$("/have",t)!==void 0,take:t=>E("studio",`${fe(t)} added`,e(t),"",te("studio",e(t)))})}`}var u$=({key:e})=>`money ${e}`;function p$(){if(!ni())return u;let e=yR(ga());return!ro()&&e.some(t=>a.open.has(`folded studio ${u$(t)}`))&&ra(),s`<section class="questions money" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${bR()}
    <div class="folds">
      ${e.map(t=>P({of:"studio",name:u$(t),pointers:t.pointers,summary:s`<span>${t.title}${t.told?s`<small>${t.told}</small>`:u}</span>`,body:t.body}))}
    </div>
  </section>`}var bR=()=>g("run","/money/currency")===void 0?u:s`<div class="row">
        ${Bn({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,Bn=e=>h({...e,of:"studio"}),Fa=e=>tt("studio",e).map(fe).join(", "),qd=e=>["/work",e].join("/");function yR(e){let t=(i,r,l={})=>Bn({label:r,at:i,told:e,short:!0,...l}),n=(i,r)=>t(i,r,{optional:!0,takes_part:!0}),o=(i,r="")=>{let l=D("studio",i);return l&&`${l}${r}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste"],told:Fa("/packs"),body:()=>r$(e)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:Fa("/sellers"),body:()=>kR(t)},{key:"have",title:"On the shelf",pointers:["/have"],told:Fa("/have"),body:l$},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:k(ui).map(i=>fe(String(w(i,"/material")))).join(", "),body:TR},{key:"work",title:"Work",pointers:["/work"],told:o(qd("paid_an_hour"),` ${e} an hour`),body:()=>SR(t)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${e} each batch`),body:()=>s`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:AR},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>s`<div class="row">
          ${Bn({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:Fa("/asking"),body:()=>PR(t)}]}var vR=e=>(t,n)=>Object.entries(t.packs??{}).reduce((o,[i,r])=>r.reduce((l,{from:d},c)=>d===e?A(l,`/packs/${J(i)}/${c}/from`,n):l,o),t);function kR(e){let t=(n,o)=>`/sellers/${J(n)}/${o}`;return s`${tt("studio","/sellers").map(n=>s`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${xr("studio","/sellers",n)}
        </div>
        <div class="row">
          ${jd({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:vR(n)})}
          ${e(t(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${e(t(n,"postage_free_from"),"Free from",{optional:!0})}
          ${Bn({label:"From ordering to having it",at:t(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${Id({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>te("studio",t(n,"postage"))})}`}var ui={of:"studio",at:"/packaging"},xR=e=>!Kt().includes(e)&&!a.fats.some(t=>t.id===e);function TR(){let e=t=>k(ui).some(n=>w(n,"/material")===t);return s`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${k(ui).map((t,n)=>RR(String(w(t,"/material")??""),n))}
    ${kr({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(t=>tt("studio",t)).filter(xR),taken:e,take:t=>I(ui,{material:t,each_piece:""},t)})}`}function RR(e,t){let n=fo(e)!==void 0||g("studio",`/prices/${J(e)}`)!==void 0;return s`<div class="row" id=${B(ui,t)}>
    ${Bn({label:`${fe(e)}, each piece`,at:`/packaging/${t}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?u:s`<button type="button" aria-label="Say its price: ${e}" @click=${()=>Ma(e)}>
            Say its price
          </button>`}
    ${q(ui,t,e)}
  </div>`}function SR(e){let t=g("studio","/work")!==void 0,n=(o,i,r)=>Bn({label:i,at:qd(o),unit:r,optional:!0,takes_part:!0,short:!0});return s`<div class="row">
      ${e(qd("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:t})}
      ${n("each_batch","Each batch","min")} ${n("each_piece_made","Each piece made","s")}
      ${n("each_tray_fill","Each tray fill","min")} ${n("each_piece_packed","Each piece packed","s")}
    </div>
    ${H("studio","/work")}`}var d$=(e,t)=>R({of:"studio",question:e,at:`/tax/${t}`,chosen:D("studio",`/tax/${t}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),AR=()=>s`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${xt({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>s`<div class="row">${Bn({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${d$("The prices you pay are","prices_paid")} ${d$("The prices you ask are","prices_asked")}`})}`,c$=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function PR(e){let t=n=>`/asking/${J(n)}`;return s`${tt("studio","/asking").map(n=>DR(n,t(n),e))}
  ${Id({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>te("studio",t(n))})}
  ${OR(e)}`}function DR(e,t,n){let o=g("studio",t)??{},i=c$.map(([l])=>l).find(l=>o[l]!==void 0),r=l=>Bn({label:l,at:`${t}/${i}`,unit:"%",short:!0});return s`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${xr("studio","/asking",e)}
    </div>
    <div class="row">${jd({of:"studio",at:"/asking",name:e,label:"What you call it"})}</div>
    ${R({of:"studio",question:"Its price comes by",at:t,chosen:i,answers:c$,puts:l=>({[l]:""}),then:l=>`${t}/${l}`})}
    ${i?s`<div class="row">
            ${i==="price"?n(`${t}/price`,"Price of a piece"):r(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:u}
  </div>`}var Tr={of:"studio",at:"/price_endings"},OR=e=>s`<p class="question">A price ends in</p>
    ${k(Tr).map((t,n)=>s`<div class="row" id=${B(Tr,n)}>
          ${e(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${q(Tr,n,`ending ${n+1}`)}
        </div>`)}
    ${Q(Tr,"Add an ending",()=>I(Tr,"","An ending"))}`;var MR=e=>pe()&&fo(e)===void 0&&oi().length>0;function m$(){if(!ni())return s`<button type="button" @click=${FR}>Add what you paid</button>`;let e=(t,n)=>{let o=`/${J(t)}/${n}`;return{run:ha.run+o,studio:ha.studio+o}};return s`<div class="row">
      ${Te(Vt,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${Kt().map(t=>fo(t)===void 0||g("run",e(t,"paid").run)!==void 0?s`<div class="row">
              ${Te(e(t,"paid"),{label:`${fe(t)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${Te(e(t,"for"),{label:`for how much ${fe(t)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${MR(t)&&zt(e(t,"paid"))?s$(t):u}
            </div>`:a$(t))}
    </div>
    ${Kt().length?u:s`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function FR(){let e=pe()?"studio":"run",t=e==="studio"?Vt.studio:Vt.run;E(e,"Prices added",t,"",te(e,t))}var di=e=>({run:e,studio:e}),Nd=e=>({run:`/pipe/${e}`,studio:`/${e}`}),CR=di("/scales"),f$=di("/spoilage"),LR=di("/pots");function Ud(e){return Ue({name:"studio",title:"My studio",result:me(ER()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>BR(e)})}function ER(){let e=a.beside.studio?.file;return e?s`What is the same in every run, kept in ${e}.`:s`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function BR(e){let t=WR(e),n=[...t.flatMap(o=>o.all),...Ne()?[Us]:[]];return s`${pe()?u:s`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Au(n)}}>
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
              ${An(o,i)}
            </div>
            ${r()}
          </section>`)}
    </div>
    ${pe()?p$():u}`}function WR(e){let t=Ye(),n=[{title:"Scales",all:[CR],body:IR},{title:"Losses",all:[Ld("pour"),...t?[Ld("pipe")]:[]],body:()=>jR(t,e)},{title:"Rejects",all:[f$],body:qR},{title:"Pot and lye jug",all:[LR],body:NR},{title:"Moulds owned",all:h$().map(({shared:o})=>o),body:zR},{title:"Prices paid",all:oi(),body:m$}];return t&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(Nd),body:UR},{title:"Weigh-cups",all:[],body:Sh}),pe()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[li],body:Pd}),n}function IR(){let e=(t,n)=>s`${Te(di(`/scales/${t}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:t==="large"?"scale_step":void 0})}
    ${Te(di(`/scales/${t}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return s`<div class="row">${e("large","Large scale")} ${e("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function jR(e,t){return s`<div class="row">
      ${Ed("pour",e?"Base":void 0)} ${e?Ed("pipe","Topping"):u}
    </div>
    ${t?HR(t):u}`}function HR({pour:e,pipe:t,...n}){let o=ue({pour:e,pipe:t,...n}),i=(r,{in_pieces_g:l,lost_g:d})=>`${r}: ${S(C(a.units,l))} in the pieces, ${S(C(a.units,d))} lost.`;return s`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",e)} ${t?i("Topping",t):""}
  </p>`}var qR=()=>Te(f$,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function NR(){let e=(t,n,o)=>Te(di(`/pots/${t}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return s`<div class="row">
    ${e("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${e("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function UR(){let e=(n,o,i,r=!1)=>Te(Nd(n),{label:o,unit:i,short:!0,optional:!0,is_due:r,takes_part:n!=="bag_holds"}),t=n=>zt(Nd(n))!==void 0;return s`<div class="row">
    ${e("bowl/holds","Bowl holds","l",t("bowl/whisk_needs"))}
    ${e("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${e("bag_holds","One bag holds","ml")}
    ${e("lye_spoon/holds","Lye spoon holds","ml",t("lye_spoon/time_between"))}
    ${e("lye_spoon/time_between","From one spoonful to the next","s",t("lye_spoon/holds"))}
  </div>`}function h$(){return["/pour",...k(ve).map((t,n)=>ai(n))].flatMap(t=>{let n=D("run",`${t}/mould`);return n?[{mould:n,shared:{run:o_(t),studio:`/moulds_owned/${J(Pu(n))}`}}]:[]})}function zR(){return s`<div class="row">
    ${h$().map(({mould:e,shared:t})=>{let n=a.files?.moulds.find(r=>r.file===e)?.name??e,o=zt(t)===void 0?Cd(e):void 0,i=()=>{X_(e,`/moulds_owned/${J(Pu(e))}`)};return s`${Te(t,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&pe()?s`<button type="button" aria-label="Move the ${o} of ${n} into my studio" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function zd(e){let t=e&&Jo(e);return s`${VR(e)}
    <div class="set-up">${g$(t)} ${JR()} ${Ud(t)}</div>`}function g$(e){return s`${q_(e)} ${Ye()?U_(e):u}
  ${R_()?P_(e):u} ${S_()?O_(e):u}
  ${Ne()?L_(e):u} ${G_(e)} ${Ad()?E_(e?.whole):u}`}function JR(){return s`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${Ye()?u:s`<button type="button" @click=${Ah}>Add a topping</button>${Ph()}`}
      ${m_()} ${Oh()}
      ${Ad()?u:s`<button type="button" @click=${__}>Draft the label</button>`}
    </div>
  </section>`}function _$(e=u){return s`<div class="row">
    ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${zo("Mould","/pour/mould",a.files?.moulds)}
    ${zo("Base","/pour/formula",a.files?.formulas)}
    ${Ye()?zo("Topping","/pipe/formula",a.files?.formulas):u} ${e}
  </div>`}function VR(e){return s`<section class="order-of" aria-labelledby="run-title">
    ${typeof a.run.now.note=="string"?s`<p class="aside">${a.run.now.note}</p>`:u}
    ${_$(e?KR(e):u)}
    <div class="batches">${e?w_(e):u} ${Rd()}</div>
  </section>`}function KR(e){let{sell:t,make:n,fillings:o,cavities:i,casts:r,batches:l}=e.pieces,d=Ce(e)?`${l} batches, ${Z(o,"filling")}`:Ps(o,i);return O({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} ${e.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",of:"pieces.make"})}function QR(){let t=(a.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>a.formulas[n]).filter(GR);return[lt({part:"Run"},()=>[_$(),Rd()]),...t.map(n=>lt({part:String(a.formulas[n].now.name||"Formula")},()=>mg(n))),g$(),Ud()]}var GR=(e,t,n)=>n.findIndex(o=>a.formulas[o]===a.formulas[e])===t;Af(QR);var YR={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function $$(e){let t=r=>r.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(r=>!t(r))],o=r=>s`<ul>
      ${r.map(l=>s`<li class=${l.severity}><strong>${YR[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return s`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?s`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function w$(e,t){let n=e?.batches.findIndex(({numbers:l})=>l.includes(t))??-1;if(!e||n<0)return;let o=e.batches[n],i=t===1,r=o.weigh_out.filter(({vessel:l})=>l!=="melt"||i);return{plan:e,batch:o,place:`batches.${n}`,vessels:r,mark:o.mark}}function ci(e){let t=Ao(e);return t?.finished_at?"done":t||Po(e)?"under way":"not begun"}var ZR=()=>Math.max(a.plan?.pieces.batches??0,...a.bench.batches.map(({batch:e})=>e));function XR(e){let{chosen:t}=a.bench;if(t!==void 0&&t<=e)return t;let n=Array.from({length:e},(i,r)=>r+1),o=i=>n.find(r=>ci(r)===i);return o("under way")??o("not begun")??1}function Jd(){let e=ZR(),t=XR(e),n=Ao(t),o=w$(a.plan,t);return{number:t,of:e,kept:n,planned:o,weights:n?w$(n.plan,t):o}}var ln=({kept:e})=>!e&&a.is_old,pi=({plan:e,batch:t})=>e.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===t.pieces));var eS=6,tS={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function y$({number:e,of:t}){if(t<2)return u;let n=Array.from({length:t},(i,r)=>r+1),o=i=>`Batch ${i}, ${ci(i)}`;return t>eS?s`<select
      aria-label="Which batch is weighed"
      @change=${i=>b$(Number(i.target.value))}
    >
      ${n.map(i=>s`<option value=${i} ?selected=${i===e}>${o(i)}</option>`)}
    </select>`:oe("Which batch is weighed",String(e),n.map(i=>[String(i),s`<span class="status" aria-hidden="true">${tS[ci(i)]}</span> ${i}<small>
          ${ci(i)}</small
        >`]),i=>b$(Number(i)))}function b$(e){Yp(e),W(`Batch ${e}, ${ci(e)}`)}var Ca="";function v$(e){let{kept:t,number:n}=e;if(!t)return u;if(t.finished_at)return nS(e,t.finished_at);let i=(e.weights?.vessels??[]).flatMap(l=>l.rows).filter(({key:l})=>!eo(n,l).is_done).length,r=()=>i?k$(t.id):void kl(n);return s`<div class="batch-end">
    <p class="aside">Begun ${T$(t.begun_at)}; its weights stay as they were then.</p>
    ${Ca===t.id?x$(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{kl(n)}):s`<button type="button" class=${i?"":"strong"} ?disabled=${Po(n)} @click=${r}>
            This batch is done
          </button>`}
  </div>`}function nS({kept:e,number:t},n){let{id:o}=e;return s`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${T$(n)}.</p>
    ${Ca===o?x$("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Oi(t)}):s`<button type="button" @click=${()=>k$(o)}>Start this batch anew</button>`}
  </div>`}function k$(e){Ca=e,N(),K(j("batch-stays"))}function x$(e,t,n){let o=()=>{Ca="",N(),K(j("run-title"))};return s`<p><b>${e}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${t}</button>
    </div>`}var oS=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),T$=e=>oS.format(new Date(e));var iS={pour:"Base",pipe:"Topping"},R$=e=>new Map(e.flatMap(t=>t.rows.map(n=>[n.key,{row:n,vessel:t}])));function S$(e,t){let[n,o]=[R$(e),R$(t)],i=[...e,...t].some(({batter:p})=>p==="pipe"),r,l=({row:p,vessel:m})=>{let _=!i||m.batter===r;return r=m.batter,(_||!r?"":`${iS[r]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${l(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${l(p)}, now ${p.row.shown}`);return[...d,...c]}var Vd=3,Kd=new Map,Qd="";function rS(e){let{kept:t,weights:n,planned:o,of:i}=e;if(!t||t.finished_at||!n)return;let{complaint:r}=a;if(r&&!sc(r))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:G(r)};if(!o){if(!a.plan)return;let p=i>1?`the run has no batch ${e.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let l=S$(n.vessels,o.vessels),d=new Set(pi(n).map(({text:p})=>p)),c=pi(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return l.length||c.length?{told:l,dangers:c,mark:o.mark}:void 0}function A$(e){let t=rS(e),{kept:n}=e;if(!t||!n)return u;if(Kd.get(n.id)===t.mark)return lS(n.id);let o=t.dangers.length>0||t.refusal!==void 0;return s`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${sS(t)}
    </p>
    ${aS(t)}
    ${t.dangers.map(i=>s`<p class="danger"><strong>${bt}</strong> As it is now: ${i}</p>`)}
    ${Qd===n.id?cS(e):uS(e,t)}
  </div>`}function sS({told:e,refusal:t}){if(t!==void 0)return s`<strong>No weights can be given as it is now:</strong> ${t}.`;let n=e.length-Vd;return s`${e.slice(0,Vd).join("; ")}${n>0?` and ${n} more.`:"."}`}var aS=({told:e})=>e.length>Vd?s`<details>
        <summary>All ${e.length} changes</summary>
        <p>${e.join("; ")}.</p>
      </details>`:u;function lS(e){return s`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Kd.delete(e),N())}>What has changed</button>
  </div>`}function uS(e,{mark:t,refusal:n}){let{id:o}=e.kept;return s`<div class="row">
    <button type="button" class="strong" @click=${()=>{Kd.set(o,t),N(),K(j("run-title"))}}>Keep weighing</button>
    ${n===void 0?s`<button type="button" @click=${()=>dS(e)}>Start this batch anew</button>`:u}
  </div>`}function dS(e){let{ticks:t,weigh_cup:n,id:o}=e.kept;if(!Object.keys(t).length&&n===void 0)return void Oi(e.number);Qd=o,N(),K(j("keep-weighing"))}function cS(e){let t=Object.keys(e.kept.ticks).length,n=()=>{Qd="",N(),K(j("run-title"))},o=()=>{n(),Oi(e.number)};return s`<p>
      <b>${t===1?"The 1 tick":`All ${t} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var P$=({text:e})=>s`<p class="danger"><strong>${bt}</strong> ${e}</p>`;function D$(e){let t=new Set(a.dangers.run.map(({text:o})=>o)),n=pi(e).filter(({text:o})=>!t.has(o));return n.length?s`<div class="dangers" role="alert">${n.map(P$)}</div>`:u}var pS=({vessel:e})=>["lye","lye_pot","share"].includes(e),mS=({batter:e},t)=>!e||!t.batter||e===t.batter;function O$(e,t){if(!pS(t))return u;let n=pi(e).filter(o=>mS(o,t));return n.length?s`<div class="dangers">${n.map(o=>s`${P$(o)} ${fS(o)}`)}</div>`:u}function fS({batter:e,topic:t}){return!e||t==="heat"?s`<button type="button" class="to-cause" @click=${gS}>To the cautions</button>`:s`<button type="button" class="to-cause" @click=${()=>hS(e)}>
    To the superfat of the ${e==="pour"?"base":"topping"}
  </button>`}function hS(e){st(e),requestAnimationFrame(()=>K(te(e,"/superfat")))}function gS(){f({view:"watch"}),K(j("watch-title"))}var Gd=(e,t)=>s`<p class="do ${ln(e)?"old":""}">${t}</p>`;function M$(e,{batch:t,plan:n}){let{below_brim_mm:o,mass_each_g:i}=t.pour,r=o<.05?"Pour to the brim":`Pour to ${S(ye(a.units,o))} below the brim`;return Gd(e,s`${r}, <b>${S(C(a.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function F$(e,{batch:t}){let n=t.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Gd(e,s`Whip until the level weigh-cup holds <b>${S(C(a.units,n.net_g))}</b>.`):u}function C$(e,{batch:t}){let{pipe:n}=t;return n?Gd(e,s`Pipe <b>${T(n.volume_each_ml,0)} ml</b> on each, ${S(C(a.units,n.mass_each_g))} at the
      planned whipped density.`):u}function L$(e,{shown:t,beside:n}){if(e==="both")return[t,n];let o=e==="us"?"oz":"g";return[Bt(n)===o?n:t,""]}function E$(e,t,n){if(t.vessel==="share"&&!e.batch.lye_pot&&n.role==="lye_solution")return $S(e,t,n);let o=_S(e,t,n);return o===void 0?void 0:{place:o}}function _S({batch:e,plan:t,place:n,vessels:o},i,r){switch(i.vessel){case"fats":case"lye":case"batter":return W$(i,r,e,n);case"layers":return bS(r,e.pour.layers??[],`${n}.pour.layers`);case"dust":return Yd(r.name,e.dust,`${n}.dust`);case"lye_pot":return r.role==="water"||r.role==="ice"?`${n}.lye_pot.water_g`:Yd(r.name,e.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let l=o.filter(d=>d.vessel==="melt");return l.length===t.decorations.length?`decorations.${l.indexOf(i)}.make_g`:void 0}case"share":return wS(i,r,e,n)}}function $S({vessels:e},t,n){let o=e.find(r=>r.vessel==="lye"&&r.key===t.key.replace(/\.share$/,".lye"));return o?{working:{of:t.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:r,shown:l})=>({name:r,value:l,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var B$=({key:e})=>Number(/^pipe\.(\d+)\./.exec(e)?.[1]??1)-1;function wS(e,t,n,o){let i=(n.pipe?.whippings??[]).slice(0,B$(e)),r=e.batter==="pipe"?i.reduce((l,{count:d})=>l+d,1):0;return t.role==="lye_solution"?`${o}.lye_pot.shares.${r}.lye_g`:t.role==="water"?`${o}.lye_pot.shares.${r}.top_up_g`:W$(e,t,n,o,"lye")}function Yd(e,t,n){let o=t.findIndex(i=>i.name===e);return o<0?void 0:`${n}.${o}.g`}function W$(e,t,n,o,i=e.vessel){let r=B$(e),[l,d]=e.batter==="pipe"?[n.pipe?.whippings[r],`${o}.pipe.whippings.${r}`]:[n.pour,`${o}.pour`],c=(l?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===t.name||t.role==="ice"&&_==="water"));return c<0?void 0:`${d}.ingredients.${c}.g`}function bS(e,t,n){let o=(t??[]).findIndex(({name:i})=>i===(e.adding??e.name));return o<0||!e.adding?o<0?void 0:`${n}.${o}.g`:Yd(e.name,t[o].colours,`${n}.${o}.colours`)}function Zd(e,t,n){let o=n.words.filter(({is_order:r})=>r),i=n.rows.every(({key:r})=>eo(e.number,r).is_done);return s`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${I$(n)}>
    <div class="vessel-head">
      <h3 id=${I$(n)}>
        ${n.title}${n.times?s` <b>${n.times} times</b>`:u}${n.day_before?s` <b>the day before</b>`:u}${i?s` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:r})=>s`<p class="vessel-order">${r}</p>`)}
    </div>
    ${O$(t,n)}
    ${Ms(n.rows,({key:r})=>r,r=>yS(e,t,n,r))}
  </section>`}var I$=({key:e})=>`vessel-${e.replaceAll(".","-")}`;function yS(e,t,n,o){let{is_done:i,is_waiting:r}=eo(e.number,o.key),[l,d]=L$(a.units,o),c=ln(e),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return s`<div class="weigh ${o.role} ${i?"done":""} ${r?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${F(i)}
        ?disabled=${e.kept?.finished_at!==void 0}
        @change=${_=>vS(e,t,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?s` <small>${m}</small>`:u}${r?s` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?s`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${l}</b>${d?s` <i>${d}</i>`:u}</span>
    </label>
    ${kS(e,t,n,o)}
  </div>`}function vS(e,{mark:t},n,o){if(!ln(e))return Kp(e.number,t,n.key,o.checked);o.checked=!o.checked,W("Not ticked: what is struck through is not to be weighed.")}function kS(e,t,n,o){let{planned:i}=e,r=i?.mark===t.mark?i.vessels.find(({key:m})=>m===n.key):void 0,l=i&&r&&E$(i,r,o);if(!l)return u;let d=`weigh.${e.number}.${o.key}`,c=a.open.has(d),p=`sum-${d.replaceAll(/[^\w]/g,"-")}`;return s`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Ee("open",d)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?s`<div class="sum" id=${p}>${"place"in l?Zl(l.place):ys(l.working)}</div>`:u}`}function Xd(e,t){let n=e.flatMap(({title:o,words:i})=>i.filter(({is_order:r})=>!r).map(({text:r})=>({title:o,text:r})));return s`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${t} ${n.map(({title:o,text:i})=>s`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function j$(e,t){let{planned:n,whip_today:o}=a;return!t||!n?void 0:(o?.of===n&&o.batch===e&&o.reading===t||xS(e,t),o?.batch===e&&o.reading===t?o:void 0)}var ec=!1;async function xS(e,t){let{planned:n}=a;if(ec||!n)return;ec=!0;let o={of:n,batch:e,reading:t},i={holds:w(n.run,"/pipe/whip/holds")??"",net:t};try{let r=await Ar({...n,run:A(n.run,"/pipe/whip_now",i)});f({whip_today:{...o,...TS(r,e)}})}catch(r){if(!(r instanceof v))throw r;f({whip_today:{...o,complaint:G(r.complaint)}})}finally{ec=!1}}function TS(e,t){let n=e.batches.find(({numbers:o})=>o.includes(t));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var nc,tc,RS=e=>nc??(Bt(e)==="oz"||!e&&a.units==="us"?"oz":"g");function H$(e,t){let n=t.batch.pipe?.whippings??[];if(!n.some(l=>l.readings.length))return u;let o=yl(e.number),i=RS(o),r=e.kept?.finished_at!==void 0;return s`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${nn("weigh_cup")}</div>
    ${vt("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${F(tc??o)}
        ?disabled=${r}
        @input=${l=>tc=l.target.value}
        @change=${l=>AS(e,t,l.target.value,i)}
      />
      ${oe("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],SS)}
    </div>
    ${PS(e,t,n,o)} ${OS(t,n)}
  </div>`}function SS(e){nc=e,N()}function AS(e,{mark:t},n,o){tc=void 0;let i=Wt(n)?`${n.trim()} ${o}`:n.trim();if(nc=void 0,i===yl(e.number))return N();if(ln(e))return W("Not taken: the weights are not those of what is typed."),N();Qp(e.number,t,i)}function PS(e,t,n,o){if(!o)return u;let i=j$(e.number,o);return i?i.complaint!==void 0?s`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==t.mark?s`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:s`<div class="today" role="status">
    ${n.map((r,l)=>s`<p>${DS(r,i.pieces?.[l]??null)}</p>`)}
  </div>`:s`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function DS({pieces:e,count:t},n){if(n===null)return u;let o=t>1?"Each of these bowls pipes":"This bowl pipes",i=e-n;return s`${o} <b>${Z(n,"piece")}</b> now.
    ${i>0?s`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${e} to make.`}`}function OS(e,t){let n=e.plan.cut?"casts":"pieces";return s`<details class="cup-table">
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
                  <th scope="row">${S(C(a.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${T(i.overrun_percent,0)} %</td>
                  <td>${e.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var Rr="pour",q$=()=>Jd().kept!==void 0;function N$(){Zr();let e=Jd(),t=a.bench.version!==void 0||a.bench.failed!==void 0;return s`<section class="weighing" data-part=${Rr} aria-labelledby="run-title">
    ${MS(e)} ${CS(e)}
    ${e.weights&&t?s`${D$(e.weights)} ${A$(e)} ${LS(e,e.weights)}`:u}
    ${v$(e)}
  </section>`}function MS(e){let{weights:t}=e;return s`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${t?.plan.run??String(a.run.now.name??"")}</h1>
    ${t?s`<p class="which">${FS(e,t)}</p>`:u}
    <div class="row">
      ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${y$(e)}
    </div>
  </div>`}function FS(e,{plan:t,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),r=i.filter(({key:d})=>eo(e.number,d).is_done).length,l=e.of>1?`Batch ${e.number} of ${e.of}: `:"";return s`<b>${l}${Nt(t,n)}</b>, ${r} of ${i.length} weighed`}function CS({number:e,weights:t}){let{failed:n,unsent:o,told:i,complaints:r,version:l}=a.bench,d=o!==void 0&&Po(e);return s`<div class="bench-told" role="status">
    ${i?.batch===e?s`<p class="alarm">${i.words}</p>
            <button type="button" @click=${Zp}>I have looked</button>`:u}
    ${d?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?s`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${r.map(c=>s`<p class="alarm">${c}</p>`)}
    ${t||n!==void 0?u:s`<p class="hint">
            ${a.complaint?"No weights before this is corrected.":l===void 0?"Reading ...":""}
          </p>`}
  </div>`}function LS(e,t){let{vessels:n}=t,o=p=>n.filter(m=>m.batter===p),i=o(),r=i.filter(p=>p.day_before),l=i.filter(p=>!p.day_before),d=o("pipe").length>0,c=p=>p.map(m=>Zd(e,t,m));return s`${HS(d,i)}
    <div class="batters ${d?"two":""}">
      ${La("ahead","To have ready",c(r))}
      ${La("base",d?"Base":"Batter",ES(e,t,o("pour"),r))}
      ${d?La("topping","Topping",[...c(o("pipe")),IS(e,t),Xd(o("pipe"),WS(e,t))]):u}
      ${La("after","At the end",c(l))}
    </div>`}var La=(e,t,n)=>n.some(o=>o!==u)?s`<div class="part-of ${e}">
        <h2 id="weigh-${e}">${t}</h2>
        ${n}
      </div>`:u;function ES(e,t,n,o){let i=({vessel:l})=>l==="layers",r=l=>l.map(d=>Zd(e,t,d));return[...r(n.filter(l=>!i(l))),M$(e,t),...r(n.filter(i)),Xd([...o,...n],BS(e,t))]}var U$=(e,t,n=u)=>s`<p class=${ln(e)?"old":""}>
    <b>Superfat as weighed:</b> ${t.map(o=>at(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,BS=(e,{batch:t})=>U$(e,[t.pour],Tn("superfat_as_weighed")),WS=(e,{batch:t})=>U$(e,t.pipe?.whippings??[]),IS=(e,t)=>s`${F$(e,t)} ${H$(e,t)} ${C$(e,t)}`,jS={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function HS(e,t){let n=[...new Set(t.flatMap(({vessel:i})=>jS[i]??[]))].join(", ").toLowerCase(),o=[["pour",e?"Base":"Batter"],...e?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===Rr)||(Rr="pour"),s`<div class="narrow">${oe("What is shown",Rr,o,qS)}</div>`)}function qS(e){Rr=e,N(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var z$=()=>s`${Zo(q$()?"No new weights can be given.":void 0)} ${N$()}`;var NS={"set-up":zd,watch:$$,money:Qg,mould:Xg,print:n_};function J$(e){let t=s`${Jr().map(o=>Ht(o))} ${zr().map(qt)}`;if(e==="weigh")return s`${t} ${z$()}`;let{plan:n}=a;return s`${t} ${Zo()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(a.run.now.name??"")}</h1>
    ${n?NS[e](n):US(e)}`}function US(e){return a.complaint?e==="set-up"?zd():s`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:s`<p class="hint">Reading the run ...</p>`}var zS=()=>{f({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function K$(){let e=a.new_run;if(!e)return s`<p class="choice"><button type="button" class="strong" @click=${zS}>New run</button></p>`;let{name:t,mould:n,formula:o}=e,i=zs(e.sell),r=t.trim()&&n&&o&&i,l=()=>{ie(async()=>{await cs({name:t.trim(),mould:n,formula:o,sell:i}),f({new_run:void 0})})};return s`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${F(t)}
          @input=${d=>b(e,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${V$(e,"mould","Mould",JS())} ${V$(e,"formula","Base",VS())}
      ${Js("new-run-sell",e.sell,d=>b(e,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${l}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${r?u:s`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var JS=()=>[...(a.files?.moulds??[]).filter(e=>!e.shipped).map(e=>[e.file,e.name||e.file]),...a.catalogue.map(e=>[e.path,e.name])],VS=()=>(a.files?.formulas??[]).map(e=>[e.file,e.name||e.file]);function V$(e,t,n,o){let i=`new-run-${t}`;return s`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${l=>b(e,{[t]:l.target.value})}>
      <option value="" .selected=${F(e[t]==="")}>choose ...</option>
      ${o.map(([l,d])=>s`<option value=${l} .selected=${F(l===e[t])}>${d}</option>`)}
    </select>
  </div>`}var KS=(e,t)=>(t.changed??"").localeCompare(e.changed??"");function G$(){let e=a.files?.runs??[],t=e.filter(o=>!o.shipped).sort(KS),n=e.filter(o=>o.shipped);return s`${ct("Runs")} ${K$()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${t.length?Rt(t,Q$):s`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Rt(n,Q$)}
    </section>
    ${pt("run")}`}function Q$(e){let{pieces:t,mould:n,due:o,made_on:i,changed:r}=e,l=[t===void 0?"":Z(t,"piece"),n??"",o?`due ${Me(o)}`:"",i?`made ${Me(i)}`:r?`changed ${Me(r)}`:""].filter(Boolean);return Ut({kind:zn,one:e,facts:l,picture:QS(n),open:()=>yn(e.file)})}var QS=e=>a.files?.moulds.find(t=>t.name===e)?.file??a.catalogue.find(t=>t.name===e)?.path;function Y$(){let e=$n();return s`${ct("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${Fs(pn,"Each file is named by the studio, or by the runs that use its tips.",t=>Ci(pn,t))}
      ${e?zf(e):u}
      ${Cs({label:"A new tip of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(Kf(t)):rs(pn,du(t)),tried:ie})}
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
          ${Hi().map(({name:t,opening:n,area_mm2:o})=>s`<tr>
                <th scope="row">${t}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":T(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${pt("tips")}`}var ew=document.getElementById("page");function tw(){let{view:e,fault:t}=a;return s` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${zg()} ${df()}
    <main
      id="main"
      tabindex="-1"
      data-view=${e}
      class=${a.is_old&&!nt(e)&&e!=="order"?"old-now":""}
    >
      ${t?s`${e==="reading"?s`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${t}</p>`:u}
      ${YS()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var GS={runs:G$,orders:Wg,formulas:hg,moulds:gg,fats:oh,tips:Y$};function YS(){let{view:e,fault:t}=a;return Qt(e)?J$(e):nt(e)?GS[e]():e==="formula"?pg():e==="order"?Bg():t?u:s`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}Yc(()=>{tg(),ot(tw(),ew),e1()});ot(tw(),ew);document.addEventListener("keydown",e=>{if(!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||nt(a.view)&&!a.mould)return;e.preventDefault();let{undo:t,redo:n}=va();(e.shiftKey?n:t)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Wm();Yn()});function ZS(){if(!a.run.file)return oc();f({fault:void 0}),Yn(),re()}function oc(){f({fault:void 0}),ug().catch(e=>{f({fault:XS(e)}),e instanceof v&&e.may_pass&&window.setTimeout(oc,2e3)})}function XS(e){return e instanceof v&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}var Z$=new ResizeObserver(([{target:e}])=>nw(e.offsetHeight)),X$=null;function e1(){let e=document.querySelector(".foremost");e!==X$&&(Z$.disconnect(),e?Z$.observe(e):nw(0),X$=e)}var nw=e=>document.documentElement.style.setProperty("--foremost",`${e}px`);af();lg();rc(e=>{Go(),e&&ZS()});oc();
