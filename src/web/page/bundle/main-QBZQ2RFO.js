import{A as xu,B as Tu,C as G,D as rt,E as Ru,F as Su,G as Xt,H as be,I as So,J as ue,K as pr,L as Au,M as Pu,O as Du,P as Mu,Q as Ou,a as uu,b as cu,c as U,d as v,e as du,f as pu,g as To,h as Sn,i as $t,j as An,k as mu,l as dr,m as fu,n as Ro,o as hu,p as gu,q as Di,r as _u,s as $u,t as wu,u as Fe,v as bu,w as yu,x as vu,y as Ce,z as ku}from"./chunk-WP4AYE63.js";var Mi=globalThis,Fi=Mi.ShadowRoot&&(Mi.ShadyCSS===void 0||Mi.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,Cu=Symbol(),Fu=new WeakMap,Oi=class{constructor(e,n,o){if(this._$cssResult$=!0,o!==Cu)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=n}get styleSheet(){let e=this.o,n=this.t;if(Fi&&e===void 0){let o=n!==void 0&&n.length===1;o&&(e=Fu.get(n)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),o&&Fu.set(n,e))}return e}toString(){return this.cssText}},Lu=t=>new Oi(typeof t=="string"?t:t+"",void 0,Cu);var Bu=(t,e)=>{if(Fi)t.adoptedStyleSheets=e.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of e){let o=document.createElement("style"),i=Mi.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,t.appendChild(o)}},mr=Fi?t=>t:t=>t instanceof CSSStyleSheet?(e=>{let n="";for(let o of e.cssRules)n+=o.cssText;return Lu(n)})(t):t;var{is:xg,defineProperty:Tg,getOwnPropertyDescriptor:Rg,getOwnPropertyNames:Sg,getOwnPropertySymbols:Ag,getPrototypeOf:Pg}=Object,Ci=globalThis,Eu=Ci.trustedTypes,Dg=Eu?Eu.emptyScript:"",Mg=Ci.reactiveElementPolyfillSupport,Ao=(t,e)=>t,fr={toAttribute(t,e){switch(e){case Boolean:t=t?Dg:null;break;case Object:case Array:t=t==null?t:JSON.stringify(t)}return t},fromAttribute(t,e){let n=t;switch(e){case Boolean:n=t!==null;break;case Number:n=t===null?null:Number(t);break;case Object:case Array:try{n=JSON.parse(t)}catch{n=null}}return n}},Iu=(t,e)=>!xg(t,e),Wu={attribute:!0,type:String,converter:fr,reflect:!1,useDefault:!1,hasChanged:Iu};Symbol.metadata??=Symbol("metadata"),Ci.litPropertyMetadata??=new WeakMap;var ye=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,n=Wu){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(e,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(e,o,n);i!==void 0&&Tg(this.prototype,e,i)}}static getPropertyDescriptor(e,n,o){let{get:i,set:s}=Rg(this.prototype,e)??{get(){return this[n]},set(a){this[n]=a}};return{get:i,set(a){let c=i?.call(this);s?.call(this,a),this.requestUpdate(e,c,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??Wu}static _$Ei(){if(this.hasOwnProperty(Ao("elementProperties")))return;let e=Pg(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(Ao("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(Ao("properties"))){let n=this.properties,o=[...Sg(n),...Ag(n)];for(let i of o)this.createProperty(i,n[i])}let e=this[Symbol.metadata];if(e!==null){let n=litPropertyMetadata.get(e);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let n=[];if(Array.isArray(e)){let o=new Set(e.flat(1/0).reverse());for(let i of o)n.unshift(mr(i))}else e!==void 0&&n.push(mr(e));return n}static _$Eu(e,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(e.set(o,this[o]),delete this[o]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return Bu(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,n,o){this._$AK(e,o)}_$ET(e,n){let o=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:fr).toAttribute(n,o.type);this._$Em=e,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(e,n){let o=this.constructor,i=o._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),a=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:fr;this._$Em=i;let c=a.fromAttribute(n,s.type);this[i]=c??this._$Ej?.get(i)??c,this._$Em=null}}requestUpdate(e,n,o,i=!1,s){if(e!==void 0){let a=this.constructor;if(i===!1&&(s=this[e]),o??=a.getPropertyOptions(e),!((o.hasChanged??Iu)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(e)&&!this.hasAttribute(a._$Eu(e,o))))return;this.C(e,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,n,{useDefault:o,reflect:i,wrapped:s},a){o&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,a??n??this[e]),s!==!0||a!==void 0)||(this._$AL.has(e)||(this.hasUpdated||o||(n=void 0),this._$AL.set(e,n)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:a}=s,c=this[i];a!==!0||this._$AL.has(i)||c===void 0||this.C(i,void 0,s,c)}}let e=!1,n=this._$AL;try{e=this.shouldUpdate(n),e?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw e=!1,this._$EM(),o}e&&this._$AE(n)}willUpdate(e){}_$AE(e){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(e){}firstUpdated(e){}};ye.elementStyles=[],ye.shadowRootOptions={mode:"open"},ye[Ao("elementProperties")]=new Map,ye[Ao("finalized")]=new Map,Mg?.({ReactiveElement:ye}),(Ci.reactiveElementVersions??=[]).push("2.1.2");var gr=globalThis,Hu=t=>t,Li=gr.trustedTypes,ju=Li?Li.createPolicy("lit-html",{createHTML:t=>t}):void 0,_r="$lit$",ve=`lit$${Math.random().toFixed(9).slice(2)}$`,$r="?"+ve,Og=`<${$r}>`,un=document,Do=()=>un.createComment(""),Mo=t=>t===null||typeof t!="object"&&typeof t!="function",wr=Array.isArray,Vu=t=>wr(t)||typeof t?.[Symbol.iterator]=="function",hr=`[ 	
\f\r]`,Po=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Nu=/-->/g,qu=/>/g,an=RegExp(`>|${hr}(?:([^\\s"'>=/]+)(${hr}*=${hr}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Uu=/'/g,zu=/"/g,Ku=/^(?:script|style|textarea|title)$/i,br=t=>(e,...n)=>({_$litType$:t,strings:e,values:n}),r=br(1),M=br(2),DT=br(3),Pt=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Ju=new WeakMap,ln=un.createTreeWalker(un,129);function Qu(t,e){if(!wr(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return ju!==void 0?ju.createHTML(e):e}var Gu=(t,e)=>{let n=t.length-1,o=[],i,s=e===2?"<svg>":e===3?"<math>":"",a=Po;for(let c=0;c<n;c++){let d=t[c],p,m,g=-1,w=0;for(;w<d.length&&(a.lastIndex=w,m=a.exec(d),m!==null);)w=a.lastIndex,a===Po?m[1]==="!--"?a=Nu:m[1]!==void 0?a=qu:m[2]!==void 0?(Ku.test(m[2])&&(i=RegExp("</"+m[2],"g")),a=an):m[3]!==void 0&&(a=an):a===an?m[0]===">"?(a=i??Po,g=-1):m[1]===void 0?g=-2:(g=a.lastIndex-m[2].length,p=m[1],a=m[3]===void 0?an:m[3]==='"'?zu:Uu):a===zu||a===Uu?a=an:a===Nu||a===qu?a=Po:(a=an,i=void 0);let b=a===an&&t[c+1].startsWith("/>")?" ":"";s+=a===Po?d+Og:g>=0?(o.push(p),d.slice(0,g)+_r+d.slice(g)+ve+b):d+ve+(g===-2?c:b)}return[Qu(t,s+(t[n]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),o]},Oo=class t{constructor({strings:e,_$litType$:n},o){let i;this.parts=[];let s=0,a=0,c=e.length-1,d=this.parts,[p,m]=Gu(e,n);if(this.el=t.createElement(p,o),ln.currentNode=this.el.content,n===2||n===3){let g=this.el.content.firstChild;g.replaceWith(...g.childNodes)}for(;(i=ln.nextNode())!==null&&d.length<c;){if(i.nodeType===1){if(i.hasAttributes())for(let g of i.getAttributeNames())if(g.endsWith(_r)){let w=m[a++],b=i.getAttribute(g).split(ve),T=/([.?@])?(.*)/.exec(w);d.push({type:1,index:s,name:T[2],strings:b,ctor:T[1]==="."?Ei:T[1]==="?"?Wi:T[1]==="@"?Ii:dn}),i.removeAttribute(g)}else g.startsWith(ve)&&(d.push({type:6,index:s}),i.removeAttribute(g));if(Ku.test(i.tagName)){let g=i.textContent.split(ve),w=g.length-1;if(w>0){i.textContent=Li?Li.emptyScript:"";for(let b=0;b<w;b++)i.append(g[b],Do()),ln.nextNode(),d.push({type:2,index:++s});i.append(g[w],Do())}}}else if(i.nodeType===8)if(i.data===$r)d.push({type:2,index:s});else{let g=-1;for(;(g=i.data.indexOf(ve,g+1))!==-1;)d.push({type:7,index:s}),g+=ve.length-1}s++}}static createElement(e,n){let o=un.createElement("template");return o.innerHTML=e,o}};function cn(t,e,n=t,o){if(e===Pt)return e;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=Mo(e)?void 0:e._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(t),i._$AT(t,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(e=cn(t,i._$AS(t,e.values),i,o)),e}var Bi=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:o}=this._$AD,i=(e?.creationScope??un).importNode(n,!0);ln.currentNode=i;let s=ln.nextNode(),a=0,c=0,d=o[0];for(;d!==void 0;){if(a===d.index){let p;d.type===2?p=new Pn(s,s.nextSibling,this,e):d.type===1?p=new d.ctor(s,d.name,d.strings,this,e):d.type===6&&(p=new Hi(s,this,e)),this._$AV.push(p),d=o[++c]}a!==d?.index&&(s=ln.nextNode(),a++)}return ln.currentNode=un,i}p(e){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(e,o,n),n+=o.strings.length-2):o._$AI(e[n])),n++}},Pn=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=cn(this,e,n),Mo(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==Pt&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):Vu(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&Mo(this._$AH)?this._$AA.nextSibling.data=e:this.T(un.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:o}=e,i=typeof o=="number"?this._$AC(e):(o.el===void 0&&(o.el=Oo.createElement(Qu(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new Bi(i,this),a=s.u(this.options);s.p(n),this.T(a),this._$AH=s}}_$AC(e){let n=Ju.get(e.strings);return n===void 0&&Ju.set(e.strings,n=new Oo(e)),n}k(e){wr(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of e)i===n.length?n.push(o=new t(this.O(Do()),this.O(Do()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){let o=Hu(e).nextSibling;Hu(e).remove(),e=o}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},dn=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,o,i,s){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(e,n=this,o,i){let s=this.strings,a=!1;if(s===void 0)e=cn(this,e,n,0),a=!Mo(e)||e!==this._$AH&&e!==Pt,a&&(this._$AH=e);else{let c=e,d,p;for(e=s[0],d=0;d<s.length-1;d++)p=cn(this,c[o+d],n,d),p===Pt&&(p=this._$AH[d]),a||=!Mo(p)||p!==this._$AH[d],p===u?e=u:e!==u&&(e+=(p??"")+s[d+1]),this._$AH[d]=p}a&&!i&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},Ei=class extends dn{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},Wi=class extends dn{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},Ii=class extends dn{constructor(e,n,o,i,s){super(e,n,o,i,s),this.type=5}_$AI(e,n=this){if((e=cn(this,e,n,0)??u)===Pt)return;let o=this._$AH,i=e===u&&o!==u||e.capture!==o.capture||e.once!==o.once||e.passive!==o.passive,s=e!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},Hi=class{constructor(e,n,o){this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(e){cn(this,e)}},Yu={M:_r,P:ve,A:$r,C:1,L:Gu,R:Bi,D:Vu,V:cn,I:Pn,H:dn,N:Wi,U:Ii,B:Ei,F:Hi},Fg=gr.litHtmlPolyfillSupport;Fg?.(Oo,Pn),(gr.litHtmlVersions??=[]).push("3.3.3");var ce=(t,e,n)=>{let o=n?.renderBefore??e,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new Pn(e.insertBefore(Do(),s),s,void 0,n??{})}return i._$AI(t),i};var yr=globalThis,Dn=class extends ye{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=ce(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Pt}};Dn._$litElement$=!0,Dn.finalized=!0,yr.litElementHydrateSupport?.({LitElement:Dn});var Cg=yr.litElementPolyfillSupport;Cg?.({LitElement:Dn});(yr.litElementVersions??=[]).push("4.2.2");var Zu=()=>{},vr=!1;function Xu(t){Zu=t}function z(){vr||(vr=!0,queueMicrotask(()=>{vr=!1,Zu()}))}function tc(t){return t.split("/").slice(1).map(e=>e.replaceAll("~1","/").replaceAll("~0","~"))}var Dt=t=>t.replaceAll("~","~0").replaceAll("/","~1");function $(t,e){let n=t;for(let o of tc(e)){if(n===null||typeof n!="object")return;n=n[o]}return n}function C(t,e,n){return kr(t,tc(e),n)}function kr(t,e,n){let[o,...i]=e;if(o===void 0)return n;if(Array.isArray(t)){let c=[...t],d=kr(c[Number(o)],i,n);return d===void 0?c.splice(Number(o),1):c[Number(o)]=d,c}let s={...t??{}},a=kr(s[o],i,n);return a===void 0?delete s[o]:s[o]=a,s}var it=["pour","pipe","apart"],wt=["studio","own_fats","own_tips"],ji=t=>wt.includes(t);var ec={};function te(t,e){(ec[t]??=[]).push(e)}function ct(t,e){for(let n of ec[t]??[])n(e)}var Mt=t=>t.slice(0,t.lastIndexOf("/")+1),Wt=t=>t.slice(t.lastIndexOf("/")+1),nc=(t,e)=>{let n=Mt(t);return n?Lg(n+e):e};function Lg(t){let e=[];for(let n of t.split("/"))n===".."?e.pop():n!=="."&&e.push(n);return e.join("/")}function Le(t,e){return(t.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+e}function Mn(t,e){let[,n,o]=/^(.*?)((?:\.(?:run|formula|fats|tips))?\.\w+)$/.exec(t)??["",t,""];for(let i=1;;++i){let s=i===1?t:`${n}_${i}${o}`;if(!e.some(a=>a.file===s))return s}}var Bg=["mould","formula","file","own_fats","own_tips"];function xr(t,e=""){return t===null||typeof t!="object"?[]:Object.entries(t).flatMap(([n,o])=>{let i=`${e}/${n}`;return typeof o!="string"?xr(o,i):Bg.includes(n)?[i]:[]})}function Tr(t,e){let[n,o]=[t,e];for(let i of["/$schema","/id",...xr(t)])[n,o]=[C(n,i,void 0),C(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function Rr(t,e){let n=["/id",...xr(t)].filter(o=>$(t,o)!==$(e,o));return o=>n.reduce((i,s)=>$(i,s)===$(t,s)?C(i,s,$(e,s)):i,o)}var V=(t,e)=>({name:t,label:e,unit:"mm"}),Be=V("height","Floor to brim"),Ni={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},Sr={block:{words:"Box, loaf or slab",measures:[V("length","Longer side at the brim"),V("width","Shorter side"),Be,Ni,{...V("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[V("floor_diameter","Across the floor"),V("brim_diameter","Across the brim"),Be]},fluted_cup:{words:"Fluted cup",measures:[V("floor_diameter","Across the floor"),V("brim_diameter","Across the brim"),Be,{name:"flutes",label:"Flutes",unit:"",count:!0},V("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},V("across_flats","Across the flats"),Be,Ni]},dome:{words:"Bowl",measures:[V("diameter","Across the brim"),Be]},half_ball:{words:"Half ball",measures:[V("diameter","Across the brim")]},ball:{words:"Ball",measures:[V("diameter","Across")]},half_ring:{words:"Half ring",measures:[V("centre_diameter","Ring, middle to middle of the tube"),V("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[V("outer_floor_diameter","Cup, across the floor"),V("outer_brim_diameter","Cup, across the brim"),V("post_floor_diameter","Post, at its foot"),V("post_brim_diameter","Post, at its top"),Be]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[V("height","Height"),V("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Be,Ni],points:{columns:[V("x","From the left"),V("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[V("side","Straight edge, tip to round"),Be,Ni]}},oc=Object.fromEntries(Object.entries(Sr).map(([t,{words:e}])=>[t,e])),On=t=>Sr[t]?.measures??[],Ee=t=>Sr[t]?.points;var Ar=(t,e)=>String($(t,e)??"").trim(),Fo=t=>Ar(t,"/shape/kind"),ee=(t,e)=>$(t,`/${e}`)!==void 0,Pr=t=>["body","skin"].includes(Ar(t,"/mesh/role"));function It(t,e){let n=$(t,e);return Array.isArray(n)?n:[]}function ic(t,e){return(Ee(Fo(t))?.columns??[]).map(({name:o})=>String($(e,`/${o}`)??"").trim())}function Co(t){return It(t,"/shape/points").flatMap((e,n)=>ic(t,e).every(Boolean)?[n]:[])}function qi(t){let e=n=>n.some(Boolean)&&!n.every(Boolean);return It(t,"/shape/points").flatMap((n,o)=>e(ic(t,n))?[o]:[])}var Dr=t=>It(t,"/water/weighings").flatMap((e,n)=>String(e).trim()?[n]:[]);function sc(t){let e=t,n=(o,i)=>{if(!Array.isArray($(e,o)))return;let s=i.map(a=>$(t,`${o}/${a}`));e=C(e,o,s)};return Ee(Fo(t))&&n("/shape/points",Co(t)),n("/water/weighings",Dr(t)),e}function Ui(t,e){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!n)return e;let s=n==="/shape/points"?Co(t):Dr(t);return`${n}/${s[Number(o)]??o}${i}`}function Lo(t){let e=[],n=i=>Ar(t,i)!=="",o=(i,s)=>{i||e.push(s)};if(ee(t,"shape")){let i=Fo(t);o(i!=="","the shape");for(let{name:a,label:c,optional:d}of On(i))o(d||n(`/shape/${a}`),c.toLowerCase());let s=Ee(i);s&&o(Co(t).length>=s.least,`${s.least} points at least`)}if(ee(t,"water")){o(n("/water/temperature"),"the water's temperature"),o($(t,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(t,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(Dr(t).length>0,"a weighing of water")}return!Pr(t)&&!ee(t,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),e}var pn={name:"run",list:"runs",new_name:({shipped:t,file:e,now:n})=>t?Wt(e):Le(String(n.name),".run.json"),written:t=>t,is_begun:()=>!0},Fn={name:"formula",list:"formulas",new_name:({shipped:t,file:e,now:n})=>t?Wt(e):Le(String(n.name),".formula.json"),written:t=>t,is_begun:()=>!0},Mr=(t,e)=>({name:t,list:e,new_name:({file:n})=>Wt(n),written:n=>n,is_begun:()=>!0}),zi=Mr("studio","studios"),Ji=Mr("fats","fats"),Vi=Mr("tips","tips"),Ot={name:"mould",list:"moulds",new_name:({now:t})=>Le(String(t.name),".json"),written:t=>({...sc(t),name:String(t.name??"").trim()}),is_begun:t=>ee(t,"shape")||ee(t,"mesh")};var rc={},ac={kind:pn,id:"",file:"",version:null,shipped:!1,now:rc,saved:rc,unanswered:[]},xt={view:"reading",came_from:"set-up",formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:ac,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},new_formula:{name:"",copied:""},printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(Ig()),folded:new Set,units:Eg(),announcement:""},l=xt;function Eg(){let t=localStorage.getItem("units");return t==="metric"||t==="us"?t:"both"}var Or=t=>`numbers ${String(t.now.id??t.file)}`,Wg=t=>({numbers:localStorage.getItem(Or(t))??void 0,figure:""});function Bo(t){f({quote_wish:{...xt.quote_wish,...t}});let{numbers:e}=xt.quote_wish;e?.trim()?localStorage.setItem(Or(xt.run),e):localStorage.removeItem(Or(xt.run))}var lc="set-up ";function Ig(){try{let t=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(t)?t.filter(e=>typeof e=="string"):[]}catch{return[]}}function Hg(){let t=[...xt.open].filter(e=>e.startsWith(lc));localStorage.setItem("parts",JSON.stringify(t))}function f(t){Object.assign(xt,t),z()}var E=t=>f({announcement:t});function y(t,e){Object.assign(t,e),z()}function de(t,e){let{[t]:n,...o}=xt.formulas;f({formulas:e?{...o,[t]:e}:o})}function zt(t,e){let n=new Set(xt[t]);n.delete(e)||n.add(e),f({[t]:n}),e.startsWith(lc)&&Hg()}function Cn(t=ac){f({run:t,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,quote_wish:Wg(t),quoted:void 0,complaint:void 0,typed:void 0,measured:void 0})}function st(t){xt.open.has(t)||f({open:new Set(xt.open).add(t)})}function mn(t,e,{name:n,note:o}={}){if(!xt.files)return;let i={file:e,name:String(n??""),note:String(o??""),shipped:!1},s=xt.files[t].filter(c=>c.file!==e),a=xt.files[t].findIndex(c=>c.file===e);s.splice(a<0?s.length:a,0,i),f({files:{...xt.files,[t]:s}})}async function pe({kind:t,name:e,text:n,from:o,about_to:i,is_own:s}){for(;;){let{runs:a=[],formulas:c=[],moulds:d=[],studios:p=[],fats:m=[],tips:g=[]}=l.files??{},w=Mn(e,[...a,...c,...d,...p,...m,...g]);i?.(w);let b=await jg(w,n,o);if(mn(t.list,w,rt(b.there.text)??{name:w}),b.is_new||s?.(b.there))return b.there}}async function jg(t,e,n){try{return{is_new:!0,there:await An({file:t,version:null,text:e,from:n})}}catch(o){if(!(o instanceof v)||o.status!==409)throw o;return{is_new:!1,there:o.answer}}}var Ki=t=>`unsaved ${t.name} ${l.files?.folder??""} `;function fn({kind:t,id:e,file:n,version:o,shipped:i,now:s},a){if(t.is_begun(s))try{let c={id:e,file:n,version:o,shipped:i,text:G(s),copy:a};localStorage.setItem(Ki(t)+e,JSON.stringify(c))}catch{}}function Fr(t,e){try{return JSON.parse(localStorage.getItem(Ki(t)+e)??"null")??void 0}catch{return}}var We=(t,e)=>localStorage.removeItem(Ki(t)+e),uc=()=>Object.keys(localStorage).some(t=>t.startsWith("unsaved "));function Qi(t){let e=Ki(t);return Object.keys(localStorage).flatMap(o=>o.startsWith(e)?[o.slice(e.length)]:[]).sort().flatMap(o=>Fr(t,o)??[])}var Ng=300,N=t=>t.now!==t.saved;function Eo(t,e,n=crypto.randomUUID()){return{kind:t,id:n,file:"",version:null,shipped:!1,now:e,saved:void 0,unanswered:[]}}async function Ft(t,e,n=e){let o=await Mu(e),i=qg(t,JSON.parse(o.text),o.shipped),s=Fr(t,n),a=s?.copy&&o.shipped?await Ug(t,s,i):void 0;if(a)return We(t,n),Ft(t,a);let{version:c,shipped:d=!1}=o,p={kind:t,id:n,file:e,version:c,shipped:d,now:i,saved:i,unanswered:[]};return s&&zg(p,s,o),p}var qg=(t,e,n=!1)=>t.name==="run"&&!n&&e.id===void 0?{...e,id:crypto.randomUUID()}:e;async function Ug(t,e,n){if(!l.files?.[t.list].some(s=>s.file===e.copy))return;let o=rt(e.text),i=rt((await $t(e.copy)).text);if(!(!o||!i||G(o)===G(n)))return Tr(t.written(o),i)?e.copy:void 0}function zg(t,e,n){let o=rt(e.text);if(!o||G(o)===G(t.now))return We(t.kind,t.id);y(t,{now:o}),!(e.version===n.version||n.shipped)&&(y(t,{version:e.version}),_c(t,n))}function ht(t,e){let n=t.now;y(t,{now:e,failed:void 0,...t.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),fn(t),ct("edited",{file:t,before:n})}var cc=new WeakMap,Cr=async t=>cc.get(t),me=t=>dc(t,()=>Jg(t)),Ln=t=>dc(t,()=>t.shipped?pc(t,mc):Promise.resolve());function dc(t,e){let n=Cr(t).then(e);return cc.set(t,n.catch(()=>{})),n}async function Jg(t){!N(t)||t.theirs||await pc(t,t.shipped||!t.file?mc:fc)}async function pc(t,e){y(t,{failed:void 0});try{await e(t)}catch(n){throw n instanceof v&&y(t,{failed:U(n.complaint)}),n}}async function mc(t){let{kind:e,id:n,now:o}=t,i=t.shipped?t.file:void 0,s=e.written(o),a=await pe({kind:e,name:e.new_name(t),text:G(s),from:i,about_to:m=>fn(t,m),is_own:({text:m})=>i!==void 0&&Tr(s,rt(m)??{})}),c=JSON.parse(a.text),d=Rr(s,c),p=t.now===o?c:d(t.now);We(e,n),y(t,{id:a.file,file:a.file,version:a.version,shipped:!1,now:p,saved:c}),N(t)&&fn(t),i!==void 0&&ct("copied",{file:t,from:i,renamed:d})}async function fc(t){let{version:e,now:n}=t,o=G(t.kind.written(n));y(t,{unanswered:[...new Set(t.unanswered).add(o)]});try{Gi(t,n,(await An({file:t.file,version:e,text:o})).version)}catch(i){if(!(i instanceof v)||i.status!==409)throw i;hc(t,i.answer),N(t)&&!t.theirs&&await fc(t)}}function Gi(t,e,n){y(t,{saved:e,version:n,theirs:void 0,failed:void 0,unanswered:[]}),N(t)?fn(t):We(t.kind,t.id),mn(t.kind.list,t.file,e)}function hc(t,{version:e,text:n}){if(n===G(t.kind.written(t.now)))return Gi(t,t.now,e);let o=n!==null&&t.unanswered.includes(n);if(y(t,{unanswered:[]}),o)return y(t,{version:e,saved:void 0,theirs:void 0});let i=N(t)||t.theirs?void 0:rt(n);i?Vg(t,i,e):_c(t,{version:e,text:n})}function Vg(t,e,n){ct("giving_way",{file:t}),y(t,{set_aside:t.now,is_taken:!0,now:e}),Gi(t,e,n),E(`${t.file} was changed outside this page, and stands here as it is now.`),ct("gave_way",{file:t})}var gc=t=>y(t,{set_aside:void 0,is_taken:void 0});function _c(t,{version:e,text:n}){y(t,{theirs:{version:e,text:n}}),fn(t),E(n===null?`${t.file} was deleted outside this page. Save it again, or leave it deleted?`:`${t.file} was changed outside this page. Which version do you want to keep?`),ct("conflict",{file:t})}function $c(t){if(!t.theirs)return;let e=rt(t.theirs.text);if(!e){let n=`what is in ${t.file} now is no ${t.kind.name}; keep what is on this page`;return y(t,{failed:n})}ct("giving_way",{file:t}),y(t,{set_aside:t.now,now:e}),Gi(t,e,t.theirs.version),ct("gave_way",{file:t})}function wc(t){t.theirs&&(y(t,{version:t.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),fn(t),ct("unwritten",{file:t}))}var hn=({theirs:t})=>t?.text===null;function bc(t){hn(t)&&(We(t.kind,t.id),y(t,{saved:t.now,theirs:void 0,failed:void 0}),E(`${t.file} stays deleted.`),ct("left_deleted",{file:t}))}function yc(t){if(!t.set_aside)return;let{set_aside:e,now:n}=t,o=t.is_taken;ht(t,e),y(t,{set_aside:o?void 0:n})}var vc=t=>(t.theirs??t).version;function kc(t,e){y(t,{id:e,file:e}),ct("renamed",{file:t,renamed:n=>n})}async function xc(t){let{version:e,text:n}=await $t(t.file),o=rt(n);if(!o||t.theirs||e===t.version)return;let i=Rr(t.now,o);if(N(t))return y(t,{version:e,now:i(t.now),saved:o});y(t,{version:e,now:o,saved:o}),ct("renamed",{file:t,renamed:i})}var Tc=t=>t.shipped||!t.file?[]:[[t.file,vc(t)]];async function Lr(t,e,n,o){let i=t.file,s=()=>vc(t)===e&&t.file===i;if(!s()||(await Cr(t),!s()))return!1;o(),await Br();let a=await Kg(i,n);return await Cr(t),s()&&(hc(t,a),N(t)&&!t.theirs&&ct("unwritten",{file:t})),!0}async function Kg(t,e){let n=await e(t);return n===null?{version:n,text:null}:$t(t)}var Br=()=>new Promise(t=>setTimeout(t,Ng));var Qg=300,Gg=1200,Yi="",Rc=0;function Wo(){let t={run:{file:l.run,now:l.run.now}};for(let e of it){let n=l.formulas[e];n&&(t[e]={file:n,now:n.now})}for(let e of wt){let n=l.beside[e];n&&(t[e]={file:n,now:n.now})}return t}function Ie(t=""){let e=performance.now();t&&t===Yi&&e-Rc<=Gg&&l.past.length||Er(Wo()),f({future:[]}),Yi=t,Rc=e}var Er=t=>f({past:[...l.past,t].slice(-Qg)});function Bn(t){Er(Sc(Wo(),t,()=>t.saved??{}))}function Sc(t,e,n){let o=Object.entries(t).map(([i,s])=>s.file===e?[i,{file:e,now:n(s.now)}]:[i,s]);return Object.fromEntries(o)}function Wr(t,e){let n=o=>o.map(i=>Sc(i,t,e));f({past:n(l.past),future:n(l.future)})}function Zi(){let t=l.past.at(-1);t&&(f({past:l.past.slice(0,-1),future:[...l.future,Wo()]}),Pc(t,"Undone"))}function Ac(){let t=l.future.at(-1);t&&(f({past:[...l.past,Wo()],future:l.future.slice(0,-1)}),Pc(t,"Redone"))}function Pc(t,e){Yi="",f({typed:void 0});for(let n of[...wt,...it,"run"])Yg(n,t);E(e)}function Yg(t,e){let n=e[t];if(ji(t))return Zg(t,n);let o=t==="run"?n?.file===l.run:l.formulas[t]!==void 0;!n||!o||(t!=="run"&&de(t,n.file),n.file.now!==n.now&&ht(n.file,n.now))}function Zg(t,e){e&&e.file===l.beside[t]&&e.file.now!==e.now&&ht(e.file,e.now)}var Xi=t=>t===l.run||it.some(e=>l.formulas[e]===t)||wt.some(e=>l.beside[e]===t);te("giving_way",({file:t})=>{Xi(t)&&(Yi="",Er(Wo()),f({typed:void 0}))});for(let t of["copied","renamed"])te(t,({file:e,renamed:n})=>Wr(e,n));function En(t){return t==="run"?l.run:ji(t)?l.beside[t]:l.formulas[t]}var Xg=t=>En(t)?.now,_=(t,e)=>$(Xg(t),e),F=(t,e)=>String(_(t,e)??"");function gt(t,e){let n=_(t,e);return Array.isArray(n)?n:[]}function X(t,e,n){let o=_(t,e)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function j(t,e,n){let o=En(t);!o||$(o.now,e)===n||(Ie(`${t} ${e}`),ht(o,C(o.now,e,n)))}function Dc(t,e){let n=En(t);n&&(Ie(),f({typed:void 0}),ht(n,e(n.now)))}function Wn(t){Ie(),f({typed:void 0});for(let[e,n]of t){let o=En(e);o&&ht(o,n(o.now))}}var ke=t=>nc(l.run.file,t);function Ct(t,e){let n=ke(t);return e?.some(o=>o.file===n)?n:t}var Ir=(t,e)=>{let{[t]:n,...o}=l.beside;f({beside:e?{...o,[t]:e}:o})};function Oc(t){for(let e of wt)l.beside[e]===t&&Ir(e,void 0)}async function t_(t,e){try{let n=await Ft(t,e);return N(n)&&Bn(n),n}catch(n){if(!(n instanceof v||n instanceof SyntaxError))throw n;return}}async function gn(t,e,n){let o=l.beside[t];if(o?.file===n)return o;let i=await t_(e,n);return Ir(t,i),i&&N(i)&&ct("unwritten",{file:i}),i?.theirs&&ct("conflict",{file:i}),i}var Fc=()=>ke("studio.json");async function In(t=!1){let e=Fc(),n=(l.files?.studios??[]).some(o=>o.file===e);l.beside.studio?.file!==e&&(n||t?await gn("studio",zi,e):Ir("studio",void 0))}async function Cc(){l.run.shipped&&await Ln(l.run);let t=Fc();await gn("studio",zi,t)||(await e_(t),await gn("studio",zi,t))}async function e_(t){try{await An({file:t,version:null,text:G({schema:"brimwright.studio/1"})})}catch(e){if(!(e instanceof v)||e.status!==409)throw e}mn("studios",t)}var Mc=(t,e)=>Mt(t.file)+e;async function n_(t){try{return rt((await $t(t)).text)!==void 0}catch(e){if(!(e instanceof v))throw e;return!1}}async function ts(t){let e=l.formulas[t];if(!e)return;e.shipped&&await Ln(e);let n=String($(e.now,"/own_fats")??"");if(n){let a=Mc(e,n);return gn("own_fats",Ji,await n_(a)?a:n)}let o=(l.files?.fats??[]).find(a=>!a.shipped&&Mt(a.file)===Mt(e.file)),i={schema:"brimwright.fats/1",fats:[]},s=o?.file??await Lc(Ji,Mc(e,"my.fats.json"),i);return j(t,"/own_fats",Wt(s)),gn("own_fats",Ji,s)}async function Hr(){l.run.shipped&&await Ln(l.run);let t="/pipe/beads/own_tips",n=String($(l.run.now,t)??"")||String($(l.beside.studio?.now,"/own_tips")??"");if(n)return gn("own_tips",Vi,ke(n));let o=Mt(l.run.file),i=(l.files?.tips??[]).find(c=>!c.shipped&&Mt(c.file)===o),s={schema:"brimwright.tips/2",tips:[]},a=i?.file??await Lc(Vi,`${o}my.tips.json`,s);return l.beside.studio?j("studio","/own_tips",Wt(a)):j("run",t,Wt(a)),gn("own_tips",Vi,a)}async function Lc(t,e,n){let{file:o}=await pe({kind:t,name:e,text:G(n)});return mn(t.list,o),o}function Bc(t,e){let n=(i,s)=>String($(i,s)??"").endsWith(Wt(e));for(let i of it)t===l.beside.own_fats&&n(l.formulas[i]?.now,"/own_fats")&&j(i,"/own_fats",t.file);let o="/pipe/beads/own_tips";t===l.beside.own_tips&&n(l.run.now,o)&&j("run",o,t.file)}var Io=[],Ho=()=>Io.at(-1);function jr(t){Io=[...Io,t],f({list_told:t.words}),E(t.words)}async function Ic(){let t=Ho();t&&(await t.undo(),Io=Io.slice(0,-1),f({list_told:""}),E("Undone"),await He())}var He=async()=>f({files:await Sn()});async function Hc(t,e){let{$schema:n,...o}=JSON.parse((await $t(e.file)).text),i=`${e.name||e.file}, copy`,s={...o,name:i,...t.name==="run"?{id:crypto.randomUUID()}:{}},{file:a}=await pe({kind:t,name:t.new_name(Eo(t,s)),text:G(s),from:e.file});return await He(),jr({words:`Copied ${e.name||e.file}.`,undo:async()=>{await dr(a,!0)}}),a}var jc=t=>/(\.(run|formula))?\.json$/.exec(t)?.[0]??"",jo=t=>Wt(t).slice(0,-jc(t).length||void 0),Nc=(t,e)=>Mt(t)+e+jc(t),Ec=t=>[l.run,...it.map(e=>l.formulas[e])].find(e=>e?.file===t);async function qc(t,e,n){let o={name:e.name,note:e.note,stem:jo(e.file)};await Wc(t,e.file,n),await He();let i=Nc(e.file,n.stem);jr({words:`Changed ${n.name||i}.`,undo:()=>Wc(t,i,o)})}async function Wc(t,e,{name:n,note:o,stem:i}){let s=Ec(e),a=s??await Ft(t,e),{note:c,...d}=a.now,p=o?{...d,name:n,note:o}:{...d,name:n};if(G(p)!==G(a.now)&&(s&&Ie(),ht(a,p),await me(a),a.theirs))throw new Error(`${e} was changed outside this page just now. Look at it again.`);let m=Nc(e,i);if(m===e)return;let{renamed_in:g}=await mu(e,m);s&&kc(s,m);for(let w of g){let b=Ec(w);b&&await xc(b)}}async function Uc(t,e){let{removed:n}=await dr(t.file,e);l.run.file===t.file&&Cn(),await He(),jr({words:`Removed ${t.name||t.file}.`,undo:async()=>{await fu(n)}})}async function je(){for(let t of["pour","pipe"]){let e=$(l.run.now,`/${t}/formula`);typeof e=="string"&&e?await o_(t,Ct(e,l.files?.formulas)):de(t,void 0)}}async function o_(t,e){if(l.formulas[t]?.file===e)return;let n=it.map(o=>l.formulas[o]).find(o=>o?.file===e);if(de(t,n),!n)try{let o=await Nr(e);de(t,o),N(o)&&ct("unwritten",{file:o}),o.theirs&&ct("conflict",{file:o})}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o}}async function Nr(t){let e=await Ft(Fn,t);return N(e)&&Bn(e),e}var zc=t=>pu("GET",`/api/bench?run=${encodeURIComponent(t)}`),Jc=t=>To("/api/bench/tick",t),Vc=t=>To("/api/bench/weigh_cup",t),Kc=(t,e)=>To("/api/bench/anew",{run:t,batch:e}),Qc=(t,e)=>To("/api/bench/finish",{run:t,batch:e});var i_=1e4,qr=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",qr);var es=[],Hn=()=>`bench ${l.files?.folder??""}`;function ne(){try{return[...JSON.parse(localStorage.getItem(Hn())??"[]"),...es]}catch{return es}}function Gc(t){try{t.length?localStorage.setItem(Hn(),JSON.stringify(t)):localStorage.removeItem(Hn()),es=[]}catch{es=t}}var s_=(t,e)=>t.run===e.run&&t.batch===e.batch&&t.key===e.key;function Yc(t){let e={...t,id:crypto.randomUUID(),tab:qr,at:Date.now()};Gc([...ne().filter(n=>!s_(n,e)),e])}var ns=t=>Gc(ne().filter(e=>!t(e))),Ur=()=>ne().find(t=>t.tab===qr||Date.now()-t.at>i_);var zr=t=>[...new Set(t.flatMap(e=>l.formulas[e]??[]))],Jr=()=>wt.flatMap(t=>l.beside[t]??[]),Zc=t=>t.filter(e=>e.theirs),xe=t=>Zc([...zr(t==="apart"?["apart"]:["pour","pipe"]),...Jr()])[0],os=()=>[l.run,...zr(it),...Jr()].filter(t=>t.is_taken&&!t.theirs),is=()=>Zc([l.run,...zr(it),...Jr()]);var No=()=>l.formulas.apart?"apart":"run",Xc=t=>f({dangers:{...l.dangers,[No()]:t}});function Vr(t){let e=t.cautions.filter(n=>n.severity==="danger");Xc(e.map(({text:n,topic:o,batter:i,batch_pieces:s})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:s})))}function td(t){t.lye_heavy&&Xc([{text:U(t),is_of_heat:!1}])}var r_=400,a_=2e3,ss=0;function qo(){clearTimeout(ss),ss=window.setTimeout(()=>{oe()},r_)}async function oe(){clearTimeout(ss);let{run:t}=l;try{await me(t),N(t)&&!t.theirs&&t===l.run&&qo()}catch(e){if(!(e instanceof v))throw e;e.may_pass&&(ss=window.setTimeout(()=>{oe()},a_))}}var ed=Promise.resolve();function jn(){let t=ed.then(l_);return ed=t.catch(()=>{}),t}async function l_(){for(let t of it){let e=l.formulas[t];!e||!N(e)||e.theirs||(e.shipped&&t!=="apart"&&await Ln(l.run),await me(e))}for(let t of wt){let e=l.beside[t];e&&N(e)&&!e.theirs&&await me(e)}}function nd(t){let e=l.run.now,n=e.pour,o=e.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},s=Ct(String(n?.mould??""),l.files?.moulds);return{file:Mn("trial.run.json",l.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(e.name??""),sell:e.sell??"",...e.spoilage===void 0?{}:{spoilage:e.spoilage},pour:{mould:s,...i,formula:t,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:e.scales??{},...u_(e)}}}function u_(t){let e={};for(let n of["cut","pots","batch"])t[n]!==void 0&&(e[n]=t[n]);if(e.batch){let{whippings:n,...o}=e.batch;e.batch=o}return e}var ie=new Map,Uo=new Set,c_={changed:{},unreadable:[]},Nn=()=>new Set([...it.flatMap(t=>l.formulas[t]??[]),...wt.flatMap(t=>l.beside[t]??[])]);async function od(){let t=d_(),e=new Set([...Nn()].map(({file:o})=>o));for(let o of ie.keys())!t.has(o)&&!e.has(o)&&ie.delete(o);for(let o of Uo)t.has(o)||Uo.delete(o);let n=[...t].filter(o=>!ie.has(o));for(let[o,i]of await id(n))ie.has(o)||ie.set(o,i)}async function id(t){let e=t.filter(o=>!Uo.has(o)),n=e.length?await Ro(new Map(e.map(o=>[o,null]))):c_;return Gr(n.unreadable),new Map(t.map(o=>[o,n.changed[o]??null]))}var Kr=async t=>(await id([t])).get(t)??null,Qr=()=>new Map([...ie].filter(([t])=>!Uo.has(t)));function d_(){let t=new Set,e=o=>{typeof o!="string"||!o||(t.add(ke(o)),o.includes("..")||t.add(o))},n=l.run.now;t.add(ke("studio.json")),e($(n,"/pour/mould")),e($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])e($(o,"/mould"));for(let o of["pour","pipe"])l.formulas[o]||e($(n,`/${o}/formula`));for(let{file:o,now:i}of Nn()){let s=i.own_fats;typeof s=="string"&&s&&t.add(Mt(o)+s).add(s)}e($(l.beside.studio?.now,"/own_tips"));for(let o of wt)t.delete(l.beside[o]?.file??"");return t}function sd(t,{changed:e}){let n=Object.keys(e).filter(o=>ie.has(o)&&ie.get(o)===t.get(o));for(let o of n)ie.set(o,e[o]);return n}var Gr=t=>t.forEach(e=>Uo.add(e));function rd(){return[...Nn()].flatMap(({file:t,version:e})=>{let n=ie.get(t)??e;return ie.delete(t),n===e?[]:[t]})}var ad=0,Yr=()=>ad;function Zr(t){++ad,f({is_old:!0,changed_beside:t})}var p_=1e3,m_=450,rs=!1,_n=!1,Xr=0;function Y(){f({is_old:!0}),rs?_n=!0:qn()}async function qn(){if(rs){_n=!0;return}rs=!0,ld(!1);try{do _n=!1,await f_();while(_n)}finally{rs=!1,ld(!0),z()}}async function cd(){let{run:t}=l,e={file:t.file,run:t.now},n=await Ou(e)?.catch(()=>{});!n||t!==l.run||l.plan||uc()||(f({plan:n,planned:e}),Vr(n))}var ld=t=>{document.documentElement.dataset.settled=String(t)};function ud(){let{run:t}=l,{apart:e}=l.formulas,{file:n,now:o}=t;return()=>{let i=t===l.run&&(n===t.file||o===t.now);return e===l.formulas.apart&&(e!==void 0||i)}}async function f_(){let t=ud();try{await jn(),await od(),t=ud();let{apart:e}=l.formulas;if(xe(e?"apart":"run"))return f({is_old:!0});let n=Yr(),o=e?nd(e.file):{file:l.run.file,run:l.run.now},i=await Di(o);if(window.clearTimeout(Xr),!t())return void(_n=!0);f({plan:i,planned:o,complaint:void 0}),Vr(i);let s=n===Yr();f({is_old:_n||!s}),s&&f({changed_beside:void 0})}catch(e){if(!(e instanceof v))throw e;if(!t())return void(_n=!0);h_(e)}}function h_(t){f({is_old:!0}),window.clearTimeout(Xr);let e=()=>{f({complaint:t.complaint}),td(t.complaint)};l.complaint||!l.plan?e():Xr=window.setTimeout(e,m_),t.may_pass&&window.setTimeout(Y,p_)}var dd=2e3,Jt=t=>f({bench:{...l.bench,...t}}),g_=()=>Jt({acts:ne()});addEventListener("storage",({key:t})=>{t===Hn()&&g_()});function as(){let{file:t}=l.run;!t||l.bench.run===t||(f({bench:{run:t,batches:[],complaints:[],acts:ne()}}),Un().then(oa))}function ls(){let{run:t,version:e}=l.bench;return e===void 0||t!==l.run.file?void 0:{run:t,version:e}}var zo=0;async function Un(){let{run:t}=l.bench,e=zo;try{let n=await zc(t);if(t!==l.bench.run)return;if(e!==zo)return await Un();pd(n)}catch(n){if(!(n instanceof v))throw n;if(t!==l.bench.run)return;Jt({failed:U(n.complaint)}),md(n)&&setTimeout(()=>l.bench.failed!==void 0&&void Un(),dd)}}var pd=({batches:t,version:e,complaints:n=[]})=>Jt({batches:t,version:e,complaints:n.map(({line:o})=>o),failed:void 0}),md=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e),zn=t=>l.bench.batches.find(e=>e.batch===t),ea=t=>l.bench.acts.filter(({run:e,batch:n})=>e===l.bench.run&&n===t),Jn=t=>ea(t).length>0;function $n(t,e){let n=ea(t).find(i=>i.key===e),o=zn(t)?.ticks[e]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function na(t){let e=ea(t).find(n=>n.reading!==void 0);return(e?e.reading:zn(t)?.weigh_cup)??""}function fd(t,e,n){let{run:o}=l.bench,s=zn(t)!==void 0||!l.planned?void 0:G(l.planned.run);Yc({run:o,batch:t,seen:e,text:s,...n}),Jt({acts:ne(),chosen:t,told:void 0}),oa()}var hd=(t,e,n,o)=>fd(t,e,{key:n,done:o}),gd=(t,e,n)=>fd(t,e,{reading:n||null}),ta=!1;async function oa(){if(!ta){ta=!0;try{await navigator.locks.request(Hn(),__)}finally{ta=!1}ne().length&&setTimeout(()=>{oa()},dd)}}async function __(){for(let t=Ur();t;t=Ur())if(!await $_(t))return}async function $_(t){let{id:e}=t;try{let n=await w_(t);return++zo,ns(o=>o.id===e),b_(n,t.run),!0}catch(n){if(!(n instanceof v))throw n;return md(n)?(Jt({unsent:U(n.complaint)}),!1):(await y_(t,n),!0)}}function w_({run:t,text:e,batch:n,seen:o,key:i,done:s,reading:a}){let c={run:t,text:e,batch:n,seen:o};return i!==void 0?Jc({...c,key:i,done:s??!1}):Vc({...c,reading:a??null})}function b_(t,e){let n=ne();if(e!==l.bench.run)return Jt({acts:n,unsent:void 0});let i=[...l.bench.batches.filter(s=>s.batch!==t.batch),t].sort((s,a)=>s.batch-a.batch);Jt({acts:n,batches:i,unsent:void 0})}async function y_(t,{complaint:e}){++zo,ns(o=>o.run===t.run&&o.batch===t.batch);let n=`Not taken: ${U(e)}.`;Jt({acts:ne(),unsent:void 0,told:{batch:t.batch,words:n}}),E(n),Y(),await Un()}async function Jo(t){let{run:e}=l.bench;await _d(t,async()=>{let n=await Kc(e,t);return ns(o=>o.run===e&&o.batch===t),n})}var ia=t=>_d(t,()=>Qc(l.bench.run,t));async function _d(t,e){let{run:n}=l.bench;try{let o=await e();if(++zo,n!==l.bench.run)return;pd(o),Jt({acts:ne(),told:void 0,chosen:t})}catch(o){if(!(o instanceof v))throw o;Jt({told:{batch:t,words:U(o.complaint)}})}}var $d=t=>Jt({chosen:t,told:void 0}),wd=()=>Jt({told:void 0});var Vo=(t,e=0)=>t.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(e-i).toFixed(2)}`).join("L")}Z`).join("");function Vn(t){let e=new DataView(t).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(t,20,e))),o=s=>20+e+8+(n.bufferViews[n.accessors[s].bufferView].byteOffset??0),i=s=>n.accessors[s].count;return n.meshes.map(({name:s,primitives:[{attributes:a,indices:c,material:d}]})=>({name:s,positions:new Float32Array(t,o(a.POSITION),i(a.POSITION)*3),indices:new Uint32Array(t,o(c),i(c)),colour:n.materials[d].pbrMetallicRoughness.baseColorFactor}))}function yd(t,e,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],a=[],{positions:c,indices:d}=t;for(let p=0;p<d.length;p+=3){let m=[];for(let g=0;g<3;++g){let w=3*d[p+g],b=3*d[p+(g+1)%3],T=c[w+i]-e,J=c[b+i]-e;if(T>0==J>0)continue;let Et=T/(T-J),rn=[1e3*(c[w]+Et*(c[b]-c[w])),1e3*s*(c[w+o]+Et*(c[b+o]-c[w+o]))];T>0?m.push(rn):m.unshift(rn)}m.length===2&&a.push([m[0],m[1]])}return a}function vd(t){let e=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of t){let s=e(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of t){let s=[],a=n.get(e(i[0]))?.shift();for(;a;)s.push(a[0]),a=n.get(e(a[1]))?.shift();s.length>2&&o.push(s)}return o}function Ko(t){let e=t.positions,[n,o,i,s,a,c]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<e.length;p+=3)i=Math.min(i,e[p]),s=Math.max(s,e[p]),a=Math.min(a,e[p+1]),c=Math.max(c,e[p+1]),n=Math.min(n,e[p+2]),o=Math.max(o,e[p+2]);let d=n+(o-n)*.50137;return{loops:vd(yd(t,d)),left:1e3*i,right:1e3*s,floor:1e3*a,brim:1e3*c,cut_y:-1e3*d}}function kd(t,e){let[n,o]=[e.floor/1e3,(e.brim-e.floor)/1e3];return[.999,.50137].map(s=>vd(yd(t,n+s*o,"level"))).reduce((s,a)=>bd(a)>1.001*bd(s)?a:s)}function bd(t){let[e,n]=[1/0,-1/0];for(let o of t)for(let[i]of o)[e,n]=[Math.min(e,i),Math.max(n,i)];return Math.max(0,n-e)}function sa(t,e){let[n,o]=[1/0,-1/0];for(let i of t.loops)i.forEach(([s,a],c)=>{let[d,p]=i[(c+1)%i.length];if(!(Math.min(a,p)>e||Math.max(a,p)<e))for(let m of a===p?[s,d]:[s+(e-a)/(p-a)*(d-s)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[t.left,t.right]}var xd=40,v_=2e3,ra=0;async function Td(t){let e=await Ce({kind:"glb",gauge:t}),n=Vn(await e.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Kn(t){let[e,n]=await Promise.all([Fe(t),Td(t)]),o=Ko(n);return{gauge:e,outline:o,above:kd(n,o)}}async function k_(t){let{pockets:e}=await Fe(t),n=e[0].brim_mm-e[0].floor_mm-.001,o=Array.from({length:xd},(i,s)=>`${(n*(s+1)/xd).toFixed(4)} mm`);return Fe({...t,depth:o})}function se(){x_()}async function x_(){let t=$(l.run.now,"/pour/mould");if(typeof t!="string")return;let e=++ra,n=Ct(t,l.files?.moulds);try{let[o,i]=await Promise.all([k_({file:n}),Td({file:n})]);e===ra&&f({measured:{mould:n,gauge:o,outline:Ko(i)},measuring_failed:void 0})}catch(o){if(e!==ra)return;if(!(o instanceof v))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(se,v_)}}var Qo=()=>f({own_fats:{}});function Ne(t){let e=Go(t);return Array.isArray(e)?[...e,...l.fats]:l.fats}function Go(t){let e=l.formulas[t],n=$(e?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||e===void 0)return;let o=l.beside.own_fats;if(o&&[Mt(e.file)+n,n].includes(o.file))return Sd(o.now)??"none";let i=`${e.file}
${n}`,s=l.own_fats[i];return s||(Rd(i,"waiting"),T_(n,e.file).then(a=>Rd(i,a)),"waiting")}var Rd=(t,e)=>f({own_fats:{...l.own_fats,[t]:e}});async function T_(t,e){for(let n of new Set([Mt(e)+t,t])){let o=Sd(await R_(n));if(o)return o}return"none"}var Sd=t=>Array.isArray(t?.fats)?t.fats.map(S_):void 0;async function R_(t){try{return rt((await $t(t)).text)}catch{return}}var S_=({id:t,name:e,saponification_value:n})=>({id:String(t??""),name:String(e??t??""),own:A_(n)});function A_(t){if(t===null||typeof t!="object")return String(t??"");let{low:e,high:n}=t;return`${String(e)} to ${String(n)}`}var Qn=[],Yo;function us(){Qn.length=0;for(let{file:t,shipped:e}of l.files?.moulds??[])e||Qn.push(t);Yo===void 0&&Pd()}function Ad(t){let e=l.own_moulds[t];return!e&&t!==Yo&&!Qn.includes(t)&&Qn.push(t),Yo===void 0&&Qn.length&&Pd(),e}async function Pd(){for(;(Yo=Qn.shift())!==void 0;){let t=Yo,e=await P_(t);f({own_moulds:{...l.own_moulds,[t]:e}})}}async function P_(t){try{let{pockets:e}=await Fe({file:t});return{brimful_ml:e[0].brimful_ml,cavities:e.length}}catch(e){if(!(e instanceof v))throw e;let{field:n,problem:o,remedy:i}=e.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var Od=()=>f({own_tips:{}}),aa=!1;function la(){return!l.tips&&!aa&&(aa=!0,vu().then(t=>f({tips:t}),Fd).finally(()=>aa=!1)),l.tips??[]}function ua(t){let e=ke(t),n=l.beside.own_tips;if(n?.file===e)return Md(n.now);let o=l.own_tips[e];return o||!t||l.typed?o??[]:(Dd(e,[]),$t(e).then(({text:i})=>Dd(e,Md(rt(i))),Fd),[])}var Dd=(t,e)=>f({own_tips:{...l.own_tips,[t]:e}});function Md(t){let e=t?.tips;return(Array.isArray(e)?e:[]).map(n=>({name:String(n.name)}))}function Fd(t){if(!(t instanceof v))throw t}var cs=300,D_=5e3,Wd=2e3,M_=500,Cd=!1,Zo=new AbortController,Id=()=>Zo.abort(),Hd=()=>document.visibilityState==="hidden";function jd(){if(Cd)return;Cd=!0;let t=async()=>{Zo=new AbortController;let e=await O_(Zo).then(()=>Hd()?D_:cs,()=>Zo.signal.aborted?cs:Wd);await Ld(cs),await Ld(e-cs,Zo.signal),t()};t()}var Ld=(t,e)=>new Promise(n=>{if(t<=0||e?.aborted)return n();setTimeout(n,t),e?.addEventListener("abort",()=>n())}),Nd=()=>[l.run,...l.mould?[l.mould.open]:[],...Nn()],qd=()=>new Map(Nd().flatMap(Tc)),Bd=()=>JSON.stringify([[...qd().keys()],[...Qr().keys()],ls()?.run??null]);async function O_(t){let[e]=rd();e!==void 0&&await Ed(e);let[n,o]=[qd(),Qr()],i=new Map([...o,...n]),s=[...o].every(([d,p])=>i.get(d)===p),a=s&&!Hd()?await F_(i,t):await Ro(i,ls());a.bench!==void 0&&await Un(),Gr(a.unreadable),await C_(n,a);let[c]=sd(o,s?a:await Ro(o));c!==void 0&&await Ed(c)}async function F_(t,e){let[n,o]=[Bd(),Date.now()],i=window.setInterval(()=>{(Bd()!==n||Date.now()-o>hu+Wd)&&e.abort()},M_);try{return await gu(t,ls(),e.signal)}finally{window.clearInterval(i)}}async function C_(t,{changed:e}){let n=Nn();for(let o of Nd()){let i=t.get(o.file);i===void 0||!(o.file in e)||(n.has(o)?await L_(o,i):await Lr(o,i,Kr,()=>{}))}}async function L_(t,e){await Lr(t,e,Kr,()=>Zr(t.file))&&(Qo(),Y())}async function Ed(t){Zr(t),await Br(),Qo(),Od(),f({measured:void 0}),se(),us(),await Promise.all([je(),In(!0)]),Y()}async function Ud(t){let e=await Du();f({files:e});let n=Pu(e,t.run);try{await qe(n,n===t.run||!t.run?t.view:void 0)}catch(o){let i=o instanceof v?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function zd(){let[t,e]=await Promise.all([bu(),yu()]);f({fats:t,catalogue:e})}var B_=()=>new Promise(t=>setTimeout(t,400));async function qe(t,e="weigh"){if(!t)return f({view:"runs"});l.run.file&&N(l.run)&&await oe();let n=await Ft(pn,t);Cn(n),as(),await Promise.race([cd(),B_()]),f({view:e}),localStorage.setItem("run",n.file),N(n)&&(Bn(n),qo());let o=qn().finally(se);await Promise.all([o,je(),In()]),jd()}var E_=()=>(l.files?.studios??[]).some(t=>t.file==="studio.json");async function ds(t){let e=l.run.now,n=e.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:t.name,sell:t.sell,pour:{mould:t.mould,formula:t.formula}};E_()||(o.note=`Losses, scales and spoilage were taken over from "${String(e.name)}": check them.`,e.spoilage!==void 0&&(o.spoilage=e.spoilage),o.losses={pour:n.pour??{}},o.scales=e.scales??{},e.money&&!l.run.shipped&&(o.money=e.money));let{file:i}=await pe({kind:pn,name:Le(t.name,".run.json"),text:G(o)});st("set-up pour"),await qe(i,"set-up")}var W_="examples/plain_bars.run.json";function Vt(t){Qo();let e=be(l.view)?l.view:l.came_from;f({view:"formula",came_from:e,formula_of:t,picking:void 0,typed:void 0})}async function Xo(t){let e=["pour","pipe"].find(n=>l.run.file&&l.formulas[n]?.file===t);if(e)return Vt(e);l.run.file||await qe(W_,"reading"),await I_(t)}async function I_(t){let e={past:l.past,future:l.future};f({run_steps:e,past:[],future:[]});try{de("apart",await Nr(t))}catch(n){throw f({...e,run_steps:void 0}),n}f({plan:void 0,complaint:void 0}),Vt("apart"),qn()}async function H_(){let t=l.formulas.apart!==void 0;return await ps()?(f({view:t?"weigh":l.came_from,typed:void 0}),!0):!1}async function ps(){return l.formulas.apart?await j_()?(qn(),!0):!1:!0}async function j_(){try{await jn()}catch(e){if(!(e instanceof v))throw e;return f({complaint:e.complaint}),!1}if(l.formulas.apart?.theirs)return E("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;de("apart",void 0);let t={...l.dangers,apart:[]};return f({dangers:t,...l.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function Jd(t){let e=l.view==="formula"&&l.formulas[l.formula_of]===t,n=l.formulas.apart===t;for(let o of["pour","pipe"])l.formulas[o]===t&&de(o,void 0);n&&await ps(),e&&f({view:n?"formulas":"set-up",typed:void 0})}async function ca(t){let{file:e}=l.formulas.apart;await H_()&&j("run",`/${t}/formula`,e)}var N_=t=>({schema:"brimwright.formula/2",name:t,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),Vd=t=>Qd(N_(t));async function Kd(t,e){let{$schema:n,...o}=JSON.parse((await $t(t)).text);await Qd({...o,name:e},t)}async function Qd(t,e){let n=Le(String(t.name),".formula.json"),{file:o}=await pe({kind:Fn,name:n,text:G(t),from:e});await Xo(o)}var q_=30,U_=1200,Gd=0,da=!1,pa=!1;function fa(t,e,n){let o=e==="mesh"?l.mesh:void 0;f({mould:{way:e,title:n,open:t,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),ga()}var fe=()=>f({mould:void 0,mesh:void 0}),Gn=(t,e,n)=>fa(Eo(Ot,t),e,n);async function Zd(t,e){let n=await Ft(Ot,t,e?crypto.randomUUID():t),o=String(n.now.name??t);e&&y(n,{now:{...n.now,name:""}}),fa(n,"form",e?`A copy of ${o}`:`Change ${o}`)}async function Xd({id:t,file:e,text:n}){let o=e?await Ft(Ot,e,t):Eo(Ot,JSON.parse(n),t);fa(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var B=()=>l.mould,D=()=>B().open.now;function dt(t,e){z_(t),ht(B().open,C(D(),t,e))}var ma="",Yd=0;function z_(t){let e=performance.now(),{past:n}=B();(t!==ma||e-Yd>U_||!n.length)&&y(B(),{past:[...n,D()]}),y(B(),{future:[]}),[ma,Yd]=[t,e]}function tp(){let{past:t,future:e,open:n}=B(),o=t.at(-1);o&&(y(B(),{past:t.slice(0,-1),future:[...e,n.now]}),np(o,"Undone"))}function ep(){let{past:t,future:e,open:n}=B(),o=e.at(-1);o&&(y(B(),{past:[...t,n.now],future:e.slice(0,-1)}),np(o,"Redone"))}function np(t,e){ma="",f({typed:void 0}),ht(B().open,t),E(e)}var J_=["name","note","owned","unmould_after"];function ha(t){let e=D(),n=Object.keys({...t,...e}).filter(a=>t?.[a]!==e[a]);(!t||n.some(a=>!J_.includes(a)))&&y(B(),{is_old:!0});let i=n.some(a=>B().complaint?.field===`/${a}`),s=n.some(a=>!["name","note"].includes(a));(B().is_old||i||s)&&ga()}function ga(){clearTimeout(Gd),Gd=window.setTimeout(()=>{V_()},q_)}async function V_(){if(da)return void(pa=!0);let{mould:t}=l;if(!t)return;let e=t.open.now;if(!(!ee(e,"shape")&&!ee(e,"mesh"))){if(Lo(e).length)return y(t,{complaint:void 0});da=!0;try{let n=Ot.written(e),o={file:t.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Kn(o);t.open.now===e&&y(t,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof v))throw n;t.open.now===e&&_a(n)}finally{da=!1,pa&&ga(),pa=!1}}}function _a(t){let{field:e,problem:n,remedy:o,keep:i,entry:s}=t.complaint,a=e?`${n}; ${o}`:t.message;y(B(),{complaint:{field:Ui(D(),e),line:a,keep:i&&{...i,at:Ui(D(),i.at)},about:s===void 0?void 0:Ui(D(),`${e}/${s}`)}})}var ms=t=>Object.values(l.formulas).includes(t),ti=t=>Object.values(l.beside).includes(t),op=t=>`${String($(t,"/pour/formula"))}
${String($(t,"/pipe/formula"))}`;function K_(t,e){$(t,"/pour/mould")!==$(e,"/pour/mould")&&se(),op(t)!==op(e)&&je(),Y(),qo()}var Q_=Y;function G_(t,e){for(let n of["pour","pipe"]){if(l.formulas[n]!==t)continue;let o=`/${n}/formula`,i=s=>String($(s,o)??"").endsWith(Wt(e))?C(s,o,t.file):s;Wr(l.run,i),i(l.run.now)!==l.run.now&&ht(l.run,i(l.run.now))}}async function Y_(t){t===l.run?(Cn(),localStorage.removeItem("run"),f({view:"runs"})):t===l.mould?.open?fe():ti(t)?Oc(t):await Jd(t),await He(),l.run.file&&Y()}function ip(){te("edited",({file:t,before:e})=>{t===l.run?K_(e,t.now):ms(t)||ti(t)?Q_():t===l.mould?.open&&ha(e)}),te("gave_way",({file:t})=>{if(t===l.mould?.open)return ha();t===l.run&&(se(),je().then(Y)),Y()}),te("left_deleted",({file:t})=>{Y_(t)}),te("unwritten",({file:t})=>{t===l.run?oe():(ms(t)||ti(t))&&Y()}),te("conflict",({file:t})=>{(ms(t)||ti(t))&&f({is_old:!0})}),te("renamed",({file:t})=>{t===l.run&&(localStorage.setItem("run",t.file),se(),je()),Y()}),te("copied",({file:t,from:e})=>{ms(t)&&G_(t,e),ti(t)&&Bc(t,e),t===l.run&&(localStorage.setItem("run",t.file),In().then(Y))})}var Te=r`<span aria-hidden="true">⚠</span> Danger`;function ei(t,e="",n){let o=Ue(t,n);return o.length?r`<div class="dangers" id=${e||u}>
    ${o.map(i=>r`<p class="danger"><strong>${Te}</strong> ${i}</p>`)}
  </div>`:u}function Ue(t,e){let n=t==="pour"?"pipe":"pour";return l.dangers[t==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>t==="apart"||o.batter!==n).filter(o=>e===void 0||o.batch_pieces===void 0||o.batch_pieces===e).map(o=>o.text)}function sp(){let t=Xt(l.view)||No()==="apart",e=l.dangers.run.map(({text:n})=>({from:t?`In the run "${String(l.run.now.name??l.run.file)}": `:"",text:n}));return[...l.dangers.apart.map(({text:n})=>({from:"",text:n})),...e]}var rp=()=>sp().length>0;function ap(){let t=sp(),e=t$();return!t.length&&!e?u:r`<section class="foremost" aria-label="Danger, and figures from before">
    ${t.length?r`<div role="alert" class="dangers">
            ${t.map(({from:n,text:o})=>r`<p class="danger"><strong>${Te}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${e?r`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${e}</p>
            ${Z_()?r`<button type="button" @click=${X_}>To the question</button>`:u}
          </div>`:u}
  </section>`}var Z_=()=>xe(No())!==void 0&&!Xt(l.view);function X_(){let t=document.querySelector(".banner h2");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}),t.scrollIntoView({block:"start"}))}function t$(){if(!l.run.file||l.view==="reading")return"";let t=xe(No());return t&&hn(t)?`${t.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`:t?`${t.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:l.is_old&&l.changed_beside?`${l.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}function Yn(t){let{pieces:e,batches:n,batch_limits:o,around:i,...s}=t,[a]=n,{pour:c,pipe:d,dust:p,lye_pot:m,bottles:g}=a;return{...s,pour:c,pipe:d,dust:p,lye_pot:m,bottles:g,batch:a,place:"batches.0",whippings:d?.whippings??[],whole:t}}var at=(t,e,n=`${e}s`)=>`${t} ${t===1?e:n}`,e$=t=>t.cut?["loaf","loaves"]:["cast","casts"];function he(t,{pieces:e,casts:n}){let o=t.cut?at(e,"bar"):at(e,"piece");return n===e?o:`${o} from ${at(n,...e$(t))}`}var n$=t=>t===1?"once":`${t} times`,$a=t=>t.batches.length>1,bt=t=>t.pieces.batches>1;function ni(t){return t.length<2?t.join(""):`${t.slice(0,-1).join(", ")} and ${t.at(-1)}`}function tt(t){return bt(t.whole)?`one batch, ${he(t.whole,t.batch)}`:""}var lp=({whippings:t})=>t.length>1||(t[0]?.count??0)>1;function wa(t,e){return lp(t)?`${he(t.whole,e)}${e.count>1?`, whipped ${n$(e.count)}`:""}`:""}function fs(t,e){let n=wa(t,e);return n&&`one whipping: ${n}`}var up=t=>bt(t.whole)||lp(t),hs=(t,e)=>`${at(t,"filling")} of ${at(e,"cavity","cavities")}`;var cp=M`<path class="wall" d="M30 10l8 52h44l8-52" />`,ba={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:M`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${cp}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:M`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:M`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${cp}<path class="measure" d="M20 10h80" />`}};var ya=t=>`term ${t}`;function Re(t){return r`<button
    type="button"
    class="ask-term"
    aria-expanded=${l.open.has(ya(t))?"true":"false"}
    aria-label="What ${ba[t].name} means"
    @click=${()=>zt("open",ya(t))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function re(t){if(!l.open.has(ya(t)))return u;let{name:e,words:n,drawing:o}=ba[t];return r`<span class="term-words" role="note"
    >${o?r`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${e}</b>: ${n}</span
    ></span
  >`}var ze=t=>r`<span class="term">${Re(t)}${re(t)}</span>`;var _s=28.349523125,fp=25.4,o$=29.5735295625;function ge(t,e){return t.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1")}function k(t,e){return i$(ge(t,e))}var i$=t=>t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function Kt(t){let e=[1,2,3].find(n=>Number(t.toFixed(n))!==0);return e!==void 0?`${ge(t,e)} %`:va(t)?"just below 0 %":"0.0 %"}var va=t=>t<0||Object.is(t,-0),hp=t=>Math.abs(t-Math.round(t))<1e-6;function dp(t){return t?[0,1,2,3].find(e=>hp(t*10**e))??3:0}function pp(t){return Math.max(0,Math.ceil(-Math.log10(t)-1e-9))}function s$(t){return[0,1,2].find(e=>t.every(n=>hp(n*10**e)))??3}function $s(t,e,n){return t==="metric"?[e,""]:t==="us"?[n,""]:[e,n]}function yt(t,e){let n=s=>t[`${e}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-s$([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var gp=.001;function gs(t,e,n,o,i=1e-9){let s=10**n;return ge(o==="nearest"?t/e:Math.floor((t+i)/e*s)/s,n)}var mp=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function r$(t){if(!mp.some(e=>Math.abs(e*10-t)<1e-9||Math.abs(e-t)<1e-9))return mp.find(e=>Math.abs(e*_s-t)<.6*gp)}function et(t,e,n="nearest"){let o=e.scale_step_g||.1,i=r$(o),s=Math.min(.6*gp,o/2),a=i?gs(e.g,1,pp(o),n):gs(e.g,1,dp(o),n,s),c=i?gs(e.g,_s,dp(i),n,s):gs(e.g,_s,pp(o/_s),n),[d,p]=[`${e.g_text??a} g`,`${e.oz_text??c} oz`];return(e.reads?e.reads==="oz":i!==void 0)&&t==="both"?[p,d]:$s(t,d,p)}var O=(t,e,n=1,o="nearest")=>et(t,{g:e,scale_step_g:10**-n},o);function _t(t,e,n=1){return $s(t,`${ge(e,n)} ml`,`${ge(e/o$,2)} US fl oz`)}function pt(t,e){return $s(t,`${k(e,1)} mm`,a$(e))}function a$(t){let e=Math.round(Math.abs(t)/fp*32),n=t<0&&e?"-":"",o=e%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(e/32),a=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",a].filter(Boolean).join(" ")} in`}var ka=([t])=>t,R=([t,e])=>e?`${t} (${e})`:t;function _p(t,e){return $s(t,`${ge(e,0)} \xB0C`,`${ge(e*1.8+32,0)} \xB0F`)}function Zn(t){let e=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(t??""));if(!e)return;let n=Number(e[1]??0)+Number(e[2].replace(",","."))/Number(e[3]??1),o={mm:1,cm:10,m:1e3}[e[4]]??fp;return n*o}function _e(t){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(t??""))?.[1]?.trim()??""}var Je=t=>/^\s*[+-]?\d[\d.,/\s]*$/.test(t);function Xn(t){let e=new Date(/^\d{4}-\d\d-\d\d$/.test(t)?`${t}T12:00`:t);return Number.isNaN(e.getTime())?t:e.toLocaleDateString("en-GB",{dateStyle:"medium"})}function Ve(t){let e=Math.round(t/60);return t>=60&&t%60===0&&e<90?`${e} min`:t<90?`${Math.round(t)} s`:e<90?`${e} min`:`${Math.floor(e/60)} h ${e%60} min`}var $p=t=>t.goes_into==="lye",wp=({role:t})=>t==="alkali",l$=t=>wp(t)?"down":"nearest",wn=(t,e)=>et(t,e,l$(e));function ws(t){let e=t.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>$p(i)),n=({one:i})=>i.role==="water",o=({one:i})=>wp(i);return[...e.filter(n),...e.filter(i=>!n(i)&&!o(i)),...e.filter(o)]}function bp(t){return t.ingredients.map((e,n)=>({one:e,i:n})).filter(({one:e})=>!$p(e))}function to(t,e=()=>{}){if(!t.theirs)return u;let n=hn(t),o=`conflict-${t.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{wc(t),e()};return r`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${t.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${t.failed?r`<p class="complaint" role="status">Not loaded: ${t.failed}.</p>`:u}
    <div class="choice">
      ${n?r`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>bc(t)}>Leave it deleted</button>`:r`<button type="button" @click=${()=>$c(t)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function eo(t){if(t.theirs||!t.set_aside||Xi(t)&&!t.is_taken)return u;let e=()=>{Xi(t)&&Ie(),yc(t)};return r`<section class="banner quiet" aria-label="${t.file} was changed">
    <p>
      ${t.file} was changed outside this page, and stands here as it is
      now.${t.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${e}>Change to the other text</button>
      ${t.is_taken?r`<button type="button" @click=${()=>gc(t)}>Close</button>`:u}
    </div>
  </section>`}var Se={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},bs=t=>(...e)=>({_$litDirective$:t,values:e}),no=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,o){this._$Ct=e,this._$AM=n,this._$Ci=o}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}};var{I:u$}=Yu,yp=t=>t;var kp=t=>t.strings===void 0,vp=()=>document.createComment(""),oo=(t,e,n)=>{let o=t._$AA.parentNode,i=e===void 0?t._$AB:e._$AA;if(n===void 0){let s=o.insertBefore(vp(),i),a=o.insertBefore(vp(),i);n=new u$(s,a,t,t.options)}else{let s=n._$AB.nextSibling,a=n._$AM,c=a!==t;if(c){let d;n._$AQ?.(t),n._$AM=t,n._$AP!==void 0&&(d=t._$AU)!==a._$AU&&n._$AP(d)}if(s!==i||c){let d=n._$AA;for(;d!==s;){let p=yp(d).nextSibling;yp(o).insertBefore(d,i),d=p}}}return n},Ke=(t,e,n=t)=>(t._$AI(e,n),t),c$={},ys=(t,e=c$)=>t._$AH=e,xp=t=>t._$AH,vs=t=>{t._$AR(),t._$AA.remove()};var W=bs(class extends no{constructor(t){if(super(t),t.type!==Se.PROPERTY&&t.type!==Se.ATTRIBUTE&&t.type!==Se.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!kp(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[e]){if(e===Pt||e===u)return e;let n=t.element,o=t.name;if(t.type===Se.PROPERTY){if(e===n[o])return Pt}else if(t.type===Se.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(o))return Pt}else if(t.type===Se.ATTRIBUTE&&n.getAttribute(o)===e+"")return Pt;return ys(t),e}});var bn,oi=[],ii=()=>bn!==void 0;function Ht(t,e,n,o){if(!bn||bn.some(s=>s.id===n))return;let i=oi.flatMap(({part:s})=>s??[]);bn.push({of:t,at:e,id:n,label:o,part:i.at(-1)??"",folds:oi.flatMap(({fold:s})=>s??[])})}function Qt(t,e){oi.push(t);try{return e()}finally{oi.pop()}}var Tp=()=>{},Rp=t=>{Tp=t},ks,d$=()=>[l.run.now,...Object.values(l.formulas).map(t=>t.now),...Object.values(l.beside).map(t=>t.now),l.formulas.apart,l.plan,l.fats,l.files];function io(){if(ii())return[];let t=d$();return ks?.of.length===t.length&&t.every((n,o)=>n===ks.of[o])||(ks={of:t,wanted:p$()}),ks.wanted}function p$(){bn=[],oi=[];try{return Tp(),bn}finally{bn=void 0}}function Sp(t){l.touched.has(t)||f({touched:new Set(l.touched).add(t)})}function Ap(t,e){if(l.has_asked)return!1;let n=io().filter(o=>o.of===t&&(o.at===e||o.at.startsWith(`${e}/`)));return n.length>0&&n.every(o=>!l.touched.has(o.id))}var lt=(t,e)=>`f-${t}${e.replaceAll(/[^\w]/g,"-")}`;function xs(){return l.complaint??(l.quoted?.of===l.plan?l.quoted?.complaint:void 0)}function Gt(t,e){let n=xs();if(!(!n||n.field!==e&&!n.field.startsWith(`${e}/`)))return Ae(t)&&!Ap(t,n.field)?U(n):void 0}function vt(t,e){return xs()?.field===e?Gt(t,e):void 0}function Ae(t){let e=xs(),n=En(t)?.file;return!e||n===void 0?!1:e.file===""||e.file===n||e.file.endsWith(`/${n}`)}function m$(t,e){let n=e.slice(0,e.lastIndexOf("/"));return Object.keys(_(t,n)??{}).length>1?e:n}function yn(){let t=xs();if(t)for(let e of["run",...it,...wt])for(let n=t.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Gt(e,n)&&document.getElementById(lt(e,n));if(o)return o}}function f$(t,e){let n=t.of??"run";if(t.optional&&e.trim()==="")return;if(t.number)return/^\s*\d+([.,]\d+)?\s*$/.test(e)?Number(e.trim().replace(",",".")):e;if(t.count)return/^\s*\d{1,9}\s*$/.test(e)?Number(e):e;let o=h$(t,n);return o&&Je(e)?`${e.trim()} ${o}`:e}function h$(t,e){return _e(_(e,t.at))||t.unit||""}var Tt=(t,e,n)=>e||n?r`<p id="${t}-said" class=${e?"complaint":"hint"}>${e??n}</p>`:u,xa=!1;addEventListener("pointerdown",()=>xa=!0,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>xa=!1,!0);var g$=()=>f({typed:void 0});function Ta(t){let{id:e}=t.target,n=()=>{g$(),Sp(e)};xa?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var _$=t=>typeof t=="string"&&t.startsWith("?")?t.slice(1).trim():void 0,$$=({unit:t=""},e)=>[t.replace("cm2","cm\xB2"),e?"required":""].filter(Boolean).join(", ")||u;function h(t){let e=t.of??"run",n=lt(e,t.at),o=_(e,t.at),i=_$(o),s=l.typed?.key===n,a=s?l.typed.text:o===void 0||i!==void 0?"":String(o),c=i!==void 0||a.trim()===""&&(!t.optional||t.is_due===!0);c&&Ht(e,t.at,n,t.label);let d=Gt(e,t.at),p=w=>{let b=w.target.value;f({typed:{key:n,text:b}});let T=f$(t,b);j(e,T===void 0&&t.takes_part?m$(e,t.at):t.at,T)},g=(s&&typeof o=="string"&&o!==a?`taken as ${o}`:"")||t.hint||i;return r`<div
    class="field ${t.wide?"wide":""} ${t.short?"short":""} ${d?"wants":""}"
  >
    ${Ra(r`<label for=${n} data-said=${$$(t,c)}>${t.label}</label>`,t.term)}
    <input
      id=${n}
      aria-required=${t.optional&&!t.is_due?u:"true"}
      .value=${W(a)}
      @input=${p}
      @blur=${Ta}
      autocomplete="off"
      spellcheck="false"
      inputmode=${t.count?"numeric":t.number?"decimal":"text"}
      aria-invalid=${d?"true":"false"}
      aria-describedby=${[d||g?`${n}-said`:"",t.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${Tt(n,d,g)} ${t.term?re(t.term):u}
  </div>`}var Ra=(t,e)=>e?r`<div class="labelled">${t}${Re(e)}</div>`:t;function Ts(t){for(let e=t?.closest("details");e;e=e.parentElement?.closest("details"))e.open=!0;t?.focus()}var I=t=>()=>document.getElementById(t),mt=(t,e)=>I(lt(t,e)),si=t=>()=>document.querySelector(`#${t} :is(input, select, button[aria-pressed])`),w$=()=>document.activeElement;function nt(t){requestAnimationFrame(()=>Ts(t()))}function so(t,e,n,o=w$){E(e),Dc(t,n),nt(o)}function L(t,e,n,o,i){so(t,e,s=>C(s,n,o),i)}var Qe=(t,e,n)=>`${lt(t,e)}-${n}`;function H(t,e){let n=vt(t,e);return n?r`<p id=${lt(t,e)} class="complaint" tabindex="-1">${n}</p>`:u}var Pp=(t,e,n)=>e.map(([o,i])=>r`<button type="button" aria-pressed=${o===t?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function ot(t,e,n,o){return r`<div class="choice" role="group" aria-label=${t}>${Pp(e,n,o)}</div>`}function x({of:t="run",question:e,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:a,puts:c,then:d,hint:p,optional:m,term:g}){let w=i?Qe(t,n,e.replaceAll(/\W+/g,"-")):lt(t,o),b=s===void 0&&!m;b&&Ht(t,o,w,e);let T=i?void 0:vt(t,o),J=Et=>{if(Et===s)return;let rn=a.find(([kg])=>kg===Et)[1];L(t,`${e}: ${rn}`,n,c(Et),d&&mt(t,d(Et)))};return r`<div class="field asked ${T?"wants":""}">
    ${Ra(r`<p class="question" id="${w}-label" data-said=${b?"required":u}>${e}</p>`,g)}
    <div
      class="choice"
      role="group"
      id=${w}
      tabindex="-1"
      aria-labelledby="${w}-label"
      aria-describedby=${T||p?`${w}-said`:u}
    >
      ${Pp(s,a,J)}
    </div>
    ${Tt(w,T,p)} ${g?re(g):u}
  </div>`}function Sa(t,e,n,o){let i=lt("run",t),s=vt("run",t),a=()=>L("run",`${e}: ${n?"no":"yes"}`,t,n?void 0:o);return r`<div class="choice">
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
    ${Tt(i,s)}`}function Rt({label:t,of:e="run",at:n,answers:o,unsaid:i,optional:s,chosen:a,take:c}){let d=lt(e,n),p=Gt(e,n),m=a??F(e,n);!m&&!s&&Ht(e,n,d,t);let g=!m||o.some(([T])=>T===m),w=[["",i],...g?[]:[[m,m]],...o];return r`<div class="field choose ${p?"wants":""}">
    <label for=${d} data-said=${m||s?u:"required"}>${t}</label>
    <select
      id=${d}
      aria-required=${s?u:"true"}
      @change=${T=>{let J=T.target.value;c?c(J):j(e,n,J||!s?J:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${d}-said`:u}
    >
      ${w.filter(([T])=>T||s||!m).map(([T,J])=>r`<option value=${T} .selected=${W(T===m)}>${J}</option>`)}</select
    >${Tt(d,p)}
  </div>`}function ro(t,e,n=[]){let o=Ct(F("run",e),n);return Rt({label:t,at:e,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Pe({of:t="run",at:e,name:n,title:o,add:i,blank:s,body:a}){let c=Qe(t,e,"part"),d=Qe(t,e,"add"),p=()=>Qt({part:o},a);return _(t,e)===void 0?r`<p class="choice">
      <button type="button" id=${d} @click=${()=>L(t,`${o} added`,e,s,si(c))}>
        ${i}
      </button>
    </p>`:r`<div class="part" id=${c} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>L(t,`${o} removed`,e,void 0,I(d))}
      >
        Remove
      </button>
    </div>
    ${H(t,e)} ${p()}
  </div>`}var Dp=(t,e)=>`folded ${t} ${e}`,ao=(t,e)=>st(Dp(t,e));function P({of:t="run",name:e,pointers:n,summary:o,is_needed:i,body:s}){let a=Dp(t,e);if(ii())return r`${Qt({fold:a},s)}`;(i||n.some(p=>Gt(t,p)))&&st(a);let c=l.open.has(a);return r`<details .open=${c}>
    <summary @click=${p=>{p.preventDefault(),zt("open",a)}}>${o}</summary>
    ${c?r`<div class="folded">${s()}</div>`:u}
  </details>`}var S=({of:t="run",at:e})=>gt(t,e),q=({of:t="run",at:e},n)=>Qe(t,`${e}/${n}`,"item"),Rs=({of:t="run",at:e},n,o)=>Qe(t,`${e}/${n}`,o),b$=({of:t="run",at:e})=>lt(t,e);function ri(t,e,n,o){let{of:i="run",at:s,stays:a,and:c=d=>d}=t;so(i,e,d=>c(C(d,s,n.length||a?n:void 0),n.length),o)}function K(t,e,n){let o=S(t);ri(t,`${n} added`,[...o,e],si(q(t,o.length)))}function y$(t,e,n){let o=S(t).filter((a,c)=>c!==e),i=Math.min(e,o.length-1),s=o.length>(t.least??0);ri(t,`${n} removed`,o,s?I(Rs(t,i,"drop")):mt(t.of??"run",t.at))}function v$(t,e,n,o){let i=[...S(t)],[s]=i.splice(e,1);i.splice(e+n,0,s);let a=n<0?"earlier":"later",d=e+n===0||e+n===i.length-1?n<0?"later":"earlier":a;ri(t,`${o} moved ${a}`,i,I(Rs(t,e+n,d)))}function Z(t,e,n){let o=S(t).length-1,i=o>=(t.least??0),s=t.in_order&&o>0;if(!i&&!s)return u;let a=(c,d,p)=>r`<button
      type="button"
      id=${Rs(t,e,d)}
      ?disabled=${p}
      aria-label="${n} ${d}"
      @click=${()=>v$(t,e,c,n)}
    >
      ${c<0?"\u2191":"\u2193"}
    </button>`;return r`<div class="tools">
    ${s?r`${a(-1,"earlier",e===0)} ${a(1,"later",e===o)}`:u}
    ${i?r`<button
            type="button"
            id=${Rs(t,e,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>y$(t,e,n)}
          >
            ×
          </button>`:u}
  </div>`}function Q(t,e,n){let o=b$(t),i=vt(t.of??"run",t.at);return r`${Tt(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${e}
    </button>`}function Aa(t){let e=F(t,"/measured_density");return r`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${h({label:"Temperature at the pour",of:t,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${h({label:"Cure",of:t,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    ${R$(t)}
    ${P({of:t,name:"density",pointers:["/measured_density"],summary:`Measured density${e&&`: ${e}`}`,body:()=>h({label:"Of the plain, unwhipped batter, by weigh-cup",of:t,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var k$=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],Mp={after:"",mass:""},Op=3,x$={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:Op},()=>Mp)}}};function T$(t){return _(t,"/drying/weighings")!==void 0?"weighed":_(t,"/drying")!==void 0?"law":_(t,"/water_lost_in_cure")===void 0?"unsaid":"share"}function R$(t){let e=T$(t);return r`${x({of:t,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:e,answers:k$,puts:o=>({...X(t,"",["drying","water_lost_in_cure"]),...x$[o]})})}
  ${e==="share"?r`<div class="row">
          ${h({label:"Of the batter's water, gone when it is sold",of:t,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${e==="law"?r`<div class="row">
          ${h({label:"Of the batter's water, gone in the end",of:t,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${h({label:"After this, 63 % of that is gone",of:t,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${e==="weighed"?S$(t):u}`}function S$(t){let e={of:t,at:"/drying/weighings",least:Op};return r`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${S(e).map((n,o)=>r`<div class="row named" id=${q(e,o)}>
          ${h({label:"Time since the pour",of:t,at:`${e.at}/${o}/after`,unit:"days",short:!0})}
          ${h({label:"Mass",of:t,at:`${e.at}/${o}/mass`,unit:"g",short:!0})}
          ${Z(e,o,`weighing ${o+1}`)}
        </div>`)}
    ${Q(e,"One more weighing",()=>K(e,Mp,"weighing"))}`}var A$=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Ss=t=>Ne(t).map(e=>[e.id,e.name]),Fp=["unsaid","Not given"],Cp=["none","Holds none"],Lp=t=>t===void 0?"unsaid":t==="none"?"none":"some",P$=t=>e=>e==="some"?t:e==="none"?"none":void 0;function Bp(t,e){return Pa(t,`${e}/contains_fat`,[Fp,Cp,["some","Holds fat"]],Ss(t))}function Pa(t,e,n,o){let i=Lp(_(t,e)),s=n.some(([a])=>a===i)?i:void 0;return r`${x({of:t,question:"Fat in it",at:e,chosen:s,answers:n,puts:P$({fat:"",share:""})})}
  ${i==="some"?r`<div class="row">
          ${Rt({label:"Which fat",of:t,at:`${e}/fat`,answers:o,unsaid:"choose ..."})}
          ${h({label:"Fat in what is weighed",of:t,at:`${e}/share`,unit:"%",short:!0})}
        </div>`:u}`}var D$=[Fp,Cp,["some","Holds acid"],["typed","By what it takes up"]],M$={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Da(t,e){let n=`${e}/contains_acid`,o=_(t,`${n}/takes_up`)!==void 0?"typed":Lp(_(t,n));return r`${x({of:t,question:"Acid in it",at:n,chosen:o,answers:D$,puts:i=>M$[i]})}
  ${o==="some"?r`<div class="row">
          ${Rt({label:"Which acid",of:t,at:`${n}/acid`,answers:A$.map(i=>[i,i]),unsaid:"choose ..."})}
          ${h({label:"Of that acid in what is weighed",of:t,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?r`<div class="row">
          ${h({label:"Taken up by 1 g of it",of:t,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Ma(t,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Ma(t,e,n){let o=_(t,e)===!0?"yes":"no";return x({of:t,question:n,at:e,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var Wp={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function Ip(t,e){let n=Go(t);if(!Array.isArray(n)||!n.some(c=>c.id===e))return u;let i=gt("own_fats","/fats").findIndex(c=>c.id===e);if(!(i>=0&&l.beside.own_fats!==void 0))return r`<button type="button" @click=${()=>{O$(t,e)}}>Change this fat of my own</button>`;let a=`/fats/${i}`;return P({of:"own_fats",name:e,pointers:[a],summary:`My own fat, in ${l.beside.own_fats.file}`,body:()=>Qt({part:F("own_fats",`${a}/name`)||"Your own fat"},()=>C$(a))})}async function O$(t,e){await ts(t),ao("own_fats",e);let n=gt("own_fats","/fats").findIndex(o=>o.id===e);nt(I(`f-own_fats-fats-${n}-name`))}var F$=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function C$(t){let e=(n,o,i,s=!1)=>h({of:"own_fats",label:o,at:`${t}/${n}`,hint:i,optional:s});return r`${H("own_fats",t)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${e("name","Name of the fat")} ${e("source","The document","Supplier, name, date.")}
      ${e("lot","Lot",void 0,!0)}
    </div>
    ${x({of:"own_fats",question:"What it is",at:`${t}/kind`,chosen:F("own_fats",`${t}/kind`)||void 0,answers:F$,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${L$(`${t}/saponification_value`)}
    <div class="row">
      ${e("inci","INCI name")}
      ${e("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${e("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${P({of:"own_fats",name:`${t} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${t}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>B$(t)})}`}function L$(t){let e=_("own_fats",t),n=e!==null&&typeof e=="object"?"range":"one",o=(i,s,a=!1)=>h({of:"own_fats",label:s,at:i,number:!0,short:!0,optional:a,unit:"mg KOH/g"});return r`${x({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:t,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(t,"Saponification value"):r`${o(`${t}/low`,"Lowest")} ${o(`${t}/typical`,"Typical",!0)}
            ${o(`${t}/high`,"Highest")}`}
    </div>`}function B$(t){let e=(o,i,s,a)=>{let c=`${t}/${o}`,d=_("own_fats",c)!==void 0,p=()=>L("own_fats",`${i}: ${d?"left out":"added"}`,c,d?void 0:s);return r`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${d?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${d?"Leave out":"Add"}
        </button>
      </div>
      ${d?r`${H("own_fats",c)}${a()}`:u}
    </div>`},n=(o,i,s,a=!1)=>h({of:"own_fats",label:i,at:`${t}/${o}`,unit:s,number:a,short:!0});return r`<div class="items">
      ${e("iodine_value","Iodine value",{low:"",high:""},()=>typeof _("own_fats",`${t}/iodine_value`)=="object"?r`<div class="row">
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
    ${E$(`${t}/fatty_acids`)}
    <div class="row">
      ${h({of:"own_fats",label:"Unsaponifiable, at most",at:`${t}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${h({of:"own_fats",label:"Note on the fat",at:`${t}/note`,optional:!0})}
    </div>`}var Ep=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function E$(t){let e=Object.keys(_("own_fats",t)??{}),n=Ep.filter(([a])=>!e.includes(a)),o=a=>Ep.find(([c])=>c===a)?.[1]??a,i=a=>`${t}/${Dt(a)}`,s=a=>{let c=Array.isArray(_("own_fats",i(a))),d=(p,m)=>h({of:"own_fats",label:`${o(a)}, ${m}`,at:`${i(a)}/${p}`,unit:"%",short:!0});return r`<div class="row">
      ${c?r`${d(0,"lowest")} ${d(1,"highest")}`:h({of:"own_fats",label:o(a),at:i(a),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(a)}"
        @click=${()=>L("own_fats",`${o(a)} removed`,e.length>1?i(a):t,void 0)}
      >
        ×
      </button>
    </div>`};return r`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${H("own_fats",t)} ${e.map(s)}
    <div class="row">
      ${Rt({label:"Add a fatty acid",of:"own_fats",at:`${t}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:a=>a&&L("own_fats",`${o(a)} added`,i(a),["",""])})}
    </div>`}var W$=["tsp/lb","tbsp/lb","tsp/kg"],As=["%","g/kg",...W$].flatMap(t=>[`${t} of fats`,`${t} of batter`]),jp=[...As,"% of finished soap","g/kg of finished soap"];function Hp(t,e){let n=t.trim().replaceAll(/\s+/g," "),o=[...e].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():t,o]}function Ps(t,e,n,o,i=!1){let s=lt(t,e),[a,c]=Hp(F(t,e),o),d=l.typed?.key===s?l.typed.text:a;!i&&!(a.trim()&&c)&&Ht(t,e,s,a.trim()?`${n}: of what`:n);let m=Gt(t,e),g=(b,T)=>{let J=`${b.trim()} ${T}`.trim();j(t,e,i&&!b.trim()?void 0:J),z()},w=b=>{let T=b.target.value,[J,Et]=Hp(T,o);f({typed:{key:s,text:T}}),g(J,Et||c)};return r`<div class="field rate ${m?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${W(d)}
        @input=${w}
        @blur=${Ta}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${s}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${b=>g(d,b.target.value)}
      >
        <option value="" .selected=${W(c==="")}>of what?</option>
        ${o.map(b=>r`<option value=${b} .selected=${W(b===c)}>${b}</option>`)}
      </select>
    </div>
    ${Tt(s,m)}
  </div>`}function I$(t){let e=t.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=e.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:e.length-n.length}}var H$=.01+1e-9;function Ds(t,e){let{sum:n,unread:o}=I$(e),i=a=>`${String(Math.round(a*1e6)/1e6)} %`;if(o===e.length)return`${t} have no share yet.`;if(o)return`${t} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=H$?`${t} add to ${i(n)}.`:s>0?`${t} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${t} add to ${i(n)}: ${i(-s)} too much.`}var Np=(t,e)=>Ne(t).find(n=>n.id===e)?.name??e,ai=t=>({of:t,at:"/fats",in_order:!0,stays:!0}),Ms=t=>S(ai(t));function La(t){let e=Ms(t),n=l.picking?.of===t&&l.picking.row===e.length;return r`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${e.map((o,i)=>j$(t,i,e))}
    </ol>
    <p class="total" role="status">
      ${e.length?Ds("The fats",e.map(o=>o.share)):"No fat yet."}
    </p>
    ${e.length?u:Ht(t,"/fats",lt(t,"/fats"),"The fats")}
    ${n?Up(t):Q(ai(t),"Add a fat",()=>qp(t,e.length))} ${G$(t)}
  </section>`}function j$(t,e,n){let o=`/fats/${e}`,i=Np(t,String(n[e].fat??""))||"Which fat?",s=vt(t,`${o}/fat`)??vt(t,o),a=l.picking?.of===t&&l.picking.row===e;return r`<li class="formula-row" id=${q(ai(t),e)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${lt(t,`${o}/fat`)}
        aria-expanded=${a?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>a?Oa():qp(t,e)}
      >
        ${i}
      </button>
      ${h({label:"Share",of:t,at:`${o}/share`,unit:"%",short:!0})} ${Z(ai(t),e,i)}
    </div>
    ${s?r`<p class="complaint">${s}</p>`:u} ${a?Up(t):u}
    ${Ip(t,String(n[e].fat??""))}
    ${P({of:t,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${z$(n[e])}`,body:()=>K$(t,e)})}
  </li>`}function qp(t,e){f({picking:{of:t,row:e,text:""}}),nt(I("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Oa(){let t=l.picking;f({picking:void 0}),t&&nt(mt(t.of,t.row<Ms(t.of).length?`/fats/${t.row}/fat`:"/fats"))}function Fa(t,e){let{row:n}=l.picking,o=Ms(t);f({picking:void 0});let i=o[n]?{fat:e,share:o[n].share??""}:{fat:e,share:""};ri(ai(t),`${Np(t,e)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],mt(t,`/fats/${n}/share`))}var li=t=>t.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function Ca(t,e){let n=li(e).split(/\s+/).filter(Boolean),o=i=>n.every(s=>li(i).includes(s));return o(`${t.name} ${t.id.replaceAll("_"," ")}`)?t.name:"own"in t?void 0:[...t.also_called,t.inci].find(o)}function Up(t){let{row:e,text:n}=l.picking,o=Ms(t).map(m=>m.fat),i=N$(t,n),s=i.filter(m=>!o.includes(m.id)||o[e]===m.id),a=s.find(m=>m.id===l.picking.lit),c=m=>{f({picking:{of:t,row:e,text:m.target.value}})},d=m=>{let g=a?s.indexOf(a)+m:m>0?0:s.length-1,w=s[(g+s.length)%s.length];w&&(f({picking:{of:t,row:e,text:n,lit:w.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${w.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&Oa(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),d(m.key==="ArrowDown"?1:-1));let g=s.find(b=>li(b.name)===li(n.trim())),w=a??(s.length===1?s[0]:g);m.key==="Enter"&&w&&Fa(t,w.id)};return r`<div class="picker" role="group" aria-label="Which fat?">
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
          @input=${c}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${Oa}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let g=o.includes(m.id)&&o[e]!==m.id,w=Ca(m,n);return r`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===a?"lit":""}
          ?disabled=${g}
          aria-selected=${m===a||o[e]===m.id?"true":"false"}
          @click=${()=>Fa(t,m.id)}
        >
          ${m.name}${w===m.name||!w?"":`, ${w}`}${g?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{q$(t,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function N$(t,e){let n=Ne(t).filter(a=>Ca(a,e)!==void 0),o=e.split(/\s+/).filter(a=>a.length>2);if(n.length||o.length<2)return n;let i=a=>o.filter(c=>Ca(a,c)!==void 0).length,s=Math.max(...Ne(t).map(i));return s?Ne(t).filter(a=>i(a)===s):[]}async function q$(t,e){if(!await ts(t))return;let o=e.trim(),i=U$(o,[...l.fats,...gt("own_fats","/fats")]),s=gt("own_fats","/fats").length;j("own_fats",`/fats/${s}`,{...Wp,id:i,name:o}),Fa(t,i),ao("own_fats",i),nt(mt("own_fats",`/fats/${s}/${o?"inci":"name"}`))}function U$(t,e){let n=li(t).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!e.some(s=>s.id===i))return i}}function z$(t){let e=t.saponification_value,n=e,i=e===""||e!==null&&typeof e=="object"&&n.low===""?"to be filled in":e===void 0?"published values":e!==null&&typeof e=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(e)} mg KOH per g`;return`: ${t.lot?`${String(t.lot)}, `:""}${i}`}var J$=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],V$={published:void 0,one:"",range:{low:"",typical:"",high:""}};function K$(t,e){let n=`/fats/${e}/saponification_value`,o=_(t,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=_(t,`/fats/${e}/confirmed`)!==void 0,a=(c,d)=>h({label:c,of:t,at:d,number:!0,short:!0});return r` ${h({label:"Lot",of:t,at:`/fats/${e}/lot`,optional:!0,short:!0})}
  ${x({of:t,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:J$,puts:c=>V$[c],hint:Q$(t,F(t,`/fats/${e}/fat`))})}
  ${i==="one"?r`<div class="row">${a("Saponification value",n)}</div>`:u}
  ${i==="range"?r`<div class="row">
          ${a("Lowest",`${n}/low`)} ${a("Typical",`${n}/typical`)} ${a("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||s?Ma(t,`/fats/${e}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function Q$(t,e){let n=Ne(t).find(a=>a.id===e);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:s}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${s}).`}function G$(t){let e=Go(t),n=Array.isArray(e)?`In it: ${e.map(i=>i.name).join(", ")}.`:e==="none"?"No such file is found from here.":void 0,o=F(t,"/own_fats");return P({of:t,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>h({label:"Its name, as it lies beside this formula",of:t,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var Y$=t=>it.includes(t);function Os(){let t=l.complaint;return!t?.field||t.lye_heavy?!1:io().some(({of:e,at:n})=>Ae(e)&&(n===t.field||n.startsWith(`${t.field}/`)))}function ui(){let t=l.complaint?io():[];return t.length?r`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${t.length}</p>
    <ul class="choice">
      ${t.map(e=>r`<li>
            <button type="button" @click=${()=>Z$(e)}>
              ${e.part?r`<small>${e.part}</small> `:u}${e.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function Z$({of:t,id:e,folds:n}){for(let o of n)st(o);f({has_asked:!0}),Y$(t)?(l.view!=="formula"||l.formula_of!==t)&&Vt(t):l.view!=="set-up"&&!(t==="own_fats"&&l.view==="formula")&&f({view:"set-up"}),requestAnimationFrame(()=>nt(I(e)))}var zp="danger-of-superfat";function Ba(t,e){return r`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${h({label:"Superfat (share of all fat left unsaponified)",of:t,at:"/superfat",unit:"%",term:"superfat",described_by:Ue(t).length?zp:void 0})}
    </div>
    ${ei(t,zp)} ${X$(t)} ${sw(t,e)}
  </section>`}function X$(t){let e=gt(t,"/alkali"),n=e.length>1?"both":e[0]?.alkali;return r`${x({of:t,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>tw(e,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${e.map((i,s)=>ew(t,i,s,e.length>1))}
  ${e.length>1?r`<p class="total" role="status">
          ${Ds("The two",e.map(i=>i.share))}
        </p>`:u}`}function tw(t,e){let n=(o,i)=>({purity:"",...t.find(s=>s.alkali===o),alkali:o,share:i});return e==="both"?[n("NaOH",""),n("KOH","")]:[n(e,"100 %")]}function ew(t,e,n,o){let i=`/alkali/${n}`,s=String(e.alkali??""),a=vt(t,i)??vt(t,`${i}/alkali`);return r`<div class="formula-row">
    ${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row">
      ${o||e.share!=="100 %"?h({label:`${s}: share of the fats it saponifies`,of:t,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${h({label:`${s}: purity`,of:t,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${P({of:t,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${nw(e.purity_range)}`,body:()=>ow(t,i)})}
  </div>`}var nw=t=>Array.isArray(t)?`: ${t.map(String).join(" to ")}`:"";function ow(t,e){let n=`${e}/purity_range`,o=_(t,n)!==void 0;return r`${x({of:t,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?r`<div class="row">
          ${h({label:"Lowest",of:t,at:`${n}/0`,unit:"%",short:!0})}
          ${h({label:"Highest",of:t,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var iw={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function sw(t,e){let n=Object.keys(_(t,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(iw);return r`${x({of:t,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:aw(e)})}
    <div class="row">${n.map(s=>rw(t,s))}</div>`}function rw(t,e){let n=`/water/${e}`;return e==="water_to_alkali"?h({label:"Parts of water for 1 part of pure alkali",of:t,at:n,number:!0}):e==="lye_strength"?h({label:"Strength: pure alkali in alkali and water together",of:t,at:n,unit:"%"}):h({label:"Water, as a share of the fats",of:t,at:n,unit:"%"})}function aw(t){if(!(!t||l.is_old))return`It now makes a strength of ${k(t.lye_strength_percent,1)} %; ${k(t.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${k(t.water_percent_of_fats,1)} % of the fats.`}function Ge(t,e,n){let o=lw(t,e);return P({of:t,name:`${e} label`,pointers:["inci","allergens","document"].map(i=>`${e}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>r`${cw(t,`${e}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${Jp(t,`${e}/allergens`,"Allergen","Add an allergen",(i,s)=>dw(t,i,s))}
        ${h({label:"Supplier's document, with its date",of:t,at:`${e}/document`,optional:!0})}`})}function lw(t,e){let n=gt(t,`${e}/allergens`).length;return[_(t,`${e}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Ea={name:"",share:""},uw={unsaid:void 0,one:"",many:[Ea]};function cw(t,e,n){let o=_(t,e),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=a=>a==="many"&&o?[{...Ea,name:o}]:uw[a];return r`${x({of:t,question:`INCI of ${n}`,at:e,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?h({label:"INCI name",of:t,at:e}):u}
  ${i==="many"?r`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${Jp(t,e,"INCI name","One more INCI name")}`:u}`}function dw(t,e,n){return x({of:t,question:`Allergen ${n+1}: on the EU's list?`,at:`${e}/listed`,chosen:_(t,`${e}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function Jp(t,e,n,o,i){let s={of:t,at:e};return r`${S(s).map((a,c)=>r`<div class="row named" id=${q(s,c)}>
        ${h({label:`${n} ${c+1}`,of:t,at:`${e}/${c}/name`})}
        ${h({label:`Share ${c+1}`,of:t,at:`${e}/${c}/share`,unit:"%",short:!0})}
        ${i?.(`${e}/${c}`,c)??u} ${Z(s,c,String(a.name||`${n} ${c+1}`))}
      </div>`)}
  ${Q(s,o,()=>K(s,Ea,n))}`}var pw=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:kw},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:_w},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:$w},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:ww}];function Wa(t){return pw.map(e=>{let n={of:t,at:`/${e.list}`},o=S(n),i=(s,a)=>r`<li class="formula-row" id=${q(n,a)}>
        ${fw(t,e,n,s,a)} ${e.row(t,`${n.at}/${a}`,s)}
      </li>`;return r`<section class="card" aria-labelledby="${e.list}-title">
      <h2 id="${e.list}-title">${e.title}</h2>
      ${o.length?r`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:r`<p class="aside">${e.aside}</p>`}
      ${Q(n,e.add,()=>K(n,mw(e),e.add.replace("Add ","")))}
    </section>`})}function mw(t){return t.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function fw(t,e,n,o,i){let s=`/${e.list}/${i}`,a=vt(t,s),c=String(o.name||`number ${i+1} of the ${e.list}`);return r`${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row named">
      ${h({label:"Name",of:t,at:`${s}/name`})}
      ${e.list==="liquids"?u:Ps(t,`${s}/rate`,"How much",As)}
      ${Z(n,i,c)}
    </div>`}function Vp(t,e,n,o){let i=`${e}/goes_into`,s=_(t,i);return x({of:t,question:"Goes into",at:i,chosen:s||void 0,answers:n,puts:p=>p,hint:o||s?void 0:"The batter, unless you name another place.",optional:!o})}function Kp(t,e,n){let o=_(t,`${e}/stirred_in`);return r`${Vp(t,e,gw,n)}
  ${_(t,`${e}/goes_into`)==="lye"||o!==void 0?x({of:t,question:"Stirred into the lye",at:`${e}/stirred_in`,chosen:String(o??""),answers:hw,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var hw=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],gw=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Ia(t,e,n){let o=(a,c,d)=>a?`${c}${String(a)}${d}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(a=>`${e}/${a}`);return P({of:t,name:`${e} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>r` <div class="row">
          ${h({label:"Bulk density (for spoons)",of:t,at:`${e}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${h({label:"True density (in the batter)",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${Ps(t,`${e}/limit`,"The most that the supplier's document allows",jp,!0)}`})}function Ha(t,e,n,o){let i=(a,c)=>a===void 0?"":a==="none"?`no ${c}`:c,s=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return P({of:t,name:`${e} holds`,pointers:[`${e}/contains_fat`,`${e}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>r`${Bp(t,e)} ${o?Da(t,e):u}`})}var Fs=(t,e,n)=>Ge(t,e,String(n.name||"it"));function _w(t,e,n){return r`${Kp(t,e,!0)}
    <div class="folds">${Ha(t,e,n,!0)} ${Ia(t,e,n)} ${Fs(t,e,n)}</div>`}function Qp(t,e,n){return P({of:t,name:`${e} place`,pointers:[`${e}/goes_into`,`${e}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>Kp(t,e,!1)})}function $w(t,e,n){return r`<div class="folds">
    ${Ia(t,e,n)} ${Fs(t,e,n)} ${Qp(t,e,n)} ${Ha(t,e,n,!1)}
  </div>`}function ww(t,e,n){return r`${yw(t,e)}
    <div class="folds">
      ${Ia(t,e,n)} ${Fs(t,e,n)} ${Qp(t,e,n)} ${Ha(t,e,n,!0)}
    </div>`}var bw=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function yw(t,e){let n=`${e}/dispersed_in`,o=_(t,n)!==void 0,i=_(t,`${n}/from`);return r`${x({of:t,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:a=>a==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?r`<div class="row">
            ${Rt({label:"Which oil",of:t,at:`${n}/fat`,answers:Ss(t),unsaid:"choose ..."})}
            ${h({label:"Oil for 1 g of colour",of:t,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${x({of:t,question:"That oil is",at:`${n}/from`,chosen:i,answers:bw,puts:a=>a,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var vw=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function kw(t,e,n){let o=(i,s,a)=>P({of:t,name:`${e}/${i}`,pointers:[`${e}/${i}`],summary:s,body:a});return r`${Tw(t,e,n)}
    ${Vp(t,e,[["lye","The lye"],["batter","The batter"]],!0)}
    ${Sw(t,e)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>xw(t,`${e}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>Da(t,e))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>h({label:"Density",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Fs(t,e,n)}
    </div>`}function xw(t,e){let n=_(t,e)===!0?"ice":"liquid";return x({of:t,question:"Goes in as ice, which keeps the lye cooler",at:e,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function Tw(t,e,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...X(t,e,["replaces","rate"]),[s]:""});return r`${x({of:t,question:"How much",at:e,asked_at:`${e}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:Rw,puts:i})}
  ${o==="replaces"?r`<div class="row">
          ${h({label:"Of the formula's water",of:t,at:`${e}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?Ps(t,`${e}/rate`,"Rate",As):u}`}var Rw=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function Sw(t,e){let n=`${e}/composition`,o=typeof _(t,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(c,d)=>h({label:c,of:t,at:`${n}/${d}`,unit:"%",short:!0});return r`${x({of:t,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:c=>c==="label"?i:""})}
  ${o?r`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${Pa(t,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Ss(t)])}
          <div class="row">
            ${h({label:"Where the figures are from",of:t,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:r`<div class="row">
          ${Rt({label:"Built-in figures of",of:t,at:n,answers:vw.map(c=>[c,c]),unsaid:"choose ..."})}
        </div>`}`}var ja=!1;function Gp(t){let{plan:e,explanation:n}=l,o=n?.of!==e;return o&&!ja&&Pw(),{workings:Aw(n?.workings,t),complaint:n?.complaint,is_old:o}}function Aw(t,e){let n=t?.get(e);return n?[n]:[...t?.values()??[]].filter(({of:o})=>o.startsWith(`${e}.`))}async function Pw(){let{plan:t,planned:e}=l;if(!(!t||!e)){ja=!0;try{let{how:n}=await _u(e);f({explanation:{of:t,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof v))throw n;f({explanation:{of:t,workings:new Map,complaint:n.message}})}finally{ja=!1}}}function A({key:t,label:e,shown:n,of:o,working:i,size:s="plain",note:a,term:c}){let d=l.open.has(t),p=`sum-${t.replaceAll(/[^\w]/g,"-")}`;return r`<div class="figure ${c?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${d?"true":"false"}
      aria-controls=${d?p:u}
      @click=${()=>zt("open",t)}
    >
      <span class="name">${e}${a?r`<small>${a}</small>`:u}</span>
      <span class="value ${s==="weigh"?"large":""} ${l.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?r` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${d?"\u2013":"="}</span>
    </button>
    ${c?r`${Re(c)}${re(c)}`:u}
    ${d?r`<div class="sum" id=${p}>${i?Yp(i):Na(o)}</div>`:u}
  </div>`}var vn=(t,e,n)=>A({key:t,label:e,shown:["",""],of:n});function Na(t){let{workings:e,complaint:n,is_old:o}=Gp(t);return e.length?r`<div class=${o?"old":""}>${e.map(Yp)}</div>`:o?r`<p class="old" role="status">Asking how it is calculated ...</p>`:r`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function Yp({formula:t,with:e,sum:n,rounded:o,comes_to:i,sources:s}){let a=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return r`<p class="formula">${t}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${e.map(({name:c,value:d,from:p})=>r`<tr>
              <th scope="row">${c}</th>
              <td>${d}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${a?r`<p class="comes-to">${a}${o?`, rounded ${o}`:""}</p>`:u}
    ${s.length?r`<p class="sources">From: ${s.join("; ")}.</p>`:u}`}var kn="/pipe/beads",De=`${kn}/tip`,Dw={of:"run",at:De},$e={at:`${kn}/moves`,in_order:!0},qa="\0own",em={tip:"",bead_to_opening:"",moves:[]},ae=(t,e)=>({name:t,label:e,kind:"length"}),Zp={name:"count",label:"How many",kind:"count"},Xp=ae("circle_radius","Radius of their circle"),Ua={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[ae("diameter","Diameter"),ae("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[ae("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},ae("start_radius","Radius at the start"),ae("end_radius","Radius at the end"),ae("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[ae("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[Zp,Xp,ae("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[Zp,Xp,ae("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[ae("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function nm(t){return r`${Ow()} ${za()?rm(Dw):Lw()}
    ${h({label:"Bead \xF7 tip opening",at:`${kn}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${S($e).map((e,n)=>jw(e,n,t))}</div>
    ${Uw()}`}var za=()=>typeof _("run",De)=="object",om=()=>String(_("run",`${kn}/own_tips`)??_("studio","/own_tips")??"");function Mw(){let t=om(),e=t?ua(t):[];return _("run",`${kn}/own_tips`)===void 0?[...e,...la()]:e}function Ow(){let t=n=>n===qa?L("run","a tip of your own",De,{name:"",round:{radius:""}},sm):j("run",De,n),e=Mw().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return r`${Rt({label:"Tip",at:De,answers:[...e,[qa,"My own, measured"]],unsaid:"Which tip?",take:t,chosen:za()?qa:void 0})}
  ${za()?u:P({name:"tips",pointers:[`${kn}/own_tips`],summary:"Tips of a file of your own",body:()=>h({label:"File of tips",at:`${kn}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var im=Qe("run",De,"own"),sm=si(im);async function Fw(){let t=_("run",De);if(!await Hr())return;let e=gt("own_tips","/tips"),n=Cw(String(t.name).trim()||"My tip",e);Wn([["own_tips",o=>C(o,`/tips/${e.length}`,{...t,name:n})],["run",o=>C(o,De,n)]]),E(`${n} kept in ${l.beside.own_tips.file}`)}function Cw(t,e){for(let n=1;;++n){let o=n===1?t:`${t} ${n}`;if(![...e,...la()].some(i=>i.name===o))return o}}function Lw(){let t=F("run",De),e=om();if(!t||!e||!ua(e).some(o=>o.name===t))return u;let n=gt("own_tips","/tips").findIndex(o=>o.name===t);return n<0?r`<button type="button" @click=${()=>{Hr()}}>Change this tip of my own</button>`:rm({of:"own_tips",at:`/tips/${n}`})}var tm=[["round","Round"],["star","Star"],["outline","Another outline"]],Cs={x:"",y:""},Bw={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Cs,Cs,Cs]};function rm({of:t,at:e}){let n=tm.map(([s])=>s),o=n.find(s=>_(t,`${e}/${s}`)!==void 0),i=s=>({...X(t,e,n),[s]:Bw[s]});return r`<div class="part" id=${im} role="group" aria-label="My own tip">
    ${H(t,e)} ${Ew({of:t,at:e})}
    ${x({of:t,question:"Opening of the tip",at:e,is_told_elsewhere:!0,chosen:o,answers:tm,puts:i})}
    ${o?Iw({of:t,at:e},o):u}
    ${P({of:t,name:"hand",pointers:[`${e}/hand`,`${e}/note`],summary:"Correction for your hand",body:()=>Ww({of:t,at:e})})}
    ${t==="run"?r`<button type="button" @click=${()=>{Fw()}}>Keep this tip for all my runs</button>`:r`<p class="hint">It stands in ${l.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var Ew=({of:t,at:e})=>t==="run"?h({label:"What you call the tip",at:`${e}/name`}):r`<p class="part-title">${F(t,`${e}/name`)}</p>`;function Ww({of:t,at:e}){let n=`${e}/hand`,o=i=>_(t,i)!==void 0;return r`<div class="row">
      ${h({of:t,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?h({of:t,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?r`<button type="button" @click=${()=>L(t,"correction removed",n,void 0,sm)}>
            Leave the correction out
          </button>`:u}
    ${h({of:t,label:"Note on the tip",at:`${e}/note`,optional:!0})}`}function Iw(t,e){if(e==="outline")return Hw(t);let{of:n,at:o}=t,i=(s,a)=>h({of:n,label:a,at:`${o}/${e}/${s}`,unit:"mm",short:!0});return r`<div class="row">
    ${e==="round"?i("radius","Radius of the opening"):r`${h({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function Hw({of:t,at:e}){let n={of:t,at:`${e}/outline`};return r`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${S(n).map((o,i)=>r`<div class="row" id=${q(n,i)}>
          ${h({of:t,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${h({of:t,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${Z(n,i,`corner ${i+1}`)}
        </div>`)}
    ${Q(n,"One more corner",()=>K(n,Cs,"corner"))}`}function jw(t,e,n){let o=Ua[String(t.move)],i=`${$e.at}/${e}`,s=`${e+1}. ${o?.words??String(t.move)}`;return r`<div class="part" id=${q($e,e)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${Z($e,e,s)}
    </div>
    ${H("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(a=>Nw(i,a))}
      ${h({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${qw(e,n)}
  </div>`}function Nw(t,{name:e,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,a=o==="length"||o==="signed"?"mm":void 0;return h({label:n,at:`${t}/${e}`,unit:a,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function qw(t,e){let n=e?.visible_by?.moves??[],o=n[t];if(!o||n.length!==S($e).length)return u;let i=o.length_mm>0?`${k(o.length_mm/10,1)} cm of bead`:"";return A({key:`pipe.move.${t}`,label:"Lays down",note:i,shown:_t(l.units,o.volume_ml),of:`pipe.visible_by.moves.${t}.volume_ml`})}function Uw(){let t=o=>({move:o,...Object.fromEntries(Ua[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),e=lt("run",$e.at),n=vt("run",$e.at);return S($e).length||Ht("run",$e.at,e,"What the tip does"),r`${Tt(e,n)}
    <div
      class="choice words"
      role="group"
      id=${e}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${e}-said`:u}
    >
      ${Object.entries(Ua).map(([o,{words:i,does:s}])=>r`<button type="button" @click=${()=>K($e,t(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}var St=()=>l.beside.studio!==void 0,ci=({run:t})=>_("run",t),Ja=({studio:t})=>_("studio",t);function di(t){return ci(t)===void 0&&St()?{of:"studio",at:t.studio}:{of:"run",at:t.run}}var xn=t=>ci(t)??Ja(t),At=(t,e)=>h({...e,...di(t)}),Va=t=>t===void 0||t===""||t!==null&&typeof t=="object"&&!Object.keys(t).length;function pi(t,e=""){return t===void 0||Va(t)?[]:t===null||typeof t!="object"||Array.isArray(t)?[[e,t]]:Object.entries(t).flatMap(([n,o])=>pi(o,`${e}/${Dt(n)}`))}function zw(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/")))$(t,n)!==void 0&&Va($(t,n))&&(t=C(t,n,void 0));return t}var lm=(t,e)=>e.reduce((n,o)=>zw(C(n,o,void 0),o),t);function um(t){let e=new Map;return t.flatMap(n=>pi(ci(n)).flatMap(([o,i])=>{let s=n.studio+o,a=e.get(s)??_("studio",s);return Va(a)||String(a).startsWith("?")||a===i?(e.set(s,i),[[n.run+o,s,i]]):[]}))}async function Ka(t){St()||await Cc();let e=um(t);Wn([["studio",n=>e.reduce((o,[,i,s])=>C(o,i,s),n)],["run",n=>lm(n,e.map(([o])=>o))]]),E("Kept in the studio")}function Jw(t){let e=t.flatMap(o=>pi(Ja(o)).map(([i,s])=>[o.run+i,s]));Wn([["run",o=>e.reduce((i,[s,a])=>$(i,s)===void 0?C(i,s,a):i,o)]]),E("Said in this run only")}function Vw(t){let e=t.flatMap(n=>pi(ci(n)).filter(([o])=>_("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Wn([["run",n=>lm(n,e)]]),E("Taken from the studio again")}var am=t=>pi(t).length>0;function lo(t,e){if(!St())return u;let n=e.some(s=>am(ci(s))),o=e.some(s=>am(Ja(s))),i=(s,a)=>r`<button type="button" aria-label="${t}: ${s}" @click=${a}>${s}</button>`;return r`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&um(e).length?i("Keep in my studio",()=>{Ka(e)}):u}
    ${n&&o?i("As in the studio",()=>Vw(e)):u}
    ${!n&&o?i("Otherwise in this run",()=>Jw(e)):u}
  </span>`}function Qa(t){let e=Object.keys(_("studio","/moulds_owned")??{}),n=l.files?.moulds;return e.find(o=>Ct(o,n)===Ct(t,n))??t}var mi=()=>Object.keys(_("studio","/cups")??{}),fi=()=>mi().length===1?{net:""}:mi().length?{cup:"",net:""}:{holds:"",net:""},cm="\0another";function hi(t,e="Cup holds"){let n=`${t}/holds`,o=mi();if(_("run",n)!==void 0||!o.length)return r`${h({label:e,at:n,unit:"ml",short:!0})}${o.length?Kw(t):u}`;let i=a=>a===cm?L("run","Another cup",t,{...Ga(t),holds:""},mt("run",n)):L("run",`Cup: ${a}`,t,{...Ga(t),cup:a}),s=a=>F("studio",`/cups/${Dt(a)}`);return Rt({label:"Which cup",at:`${t}/cup`,answers:[...o.map(a=>[a,`${a}, ${s(a)}`]),[cm,"Another cup"]],unsaid:"choose ...",chosen:F("run",`${t}/cup`)||(o.length===1?o[0]:""),take:i})}function Ga(t){let{cup:e,holds:n,...o}=_("run",t)??{};return o}var Kw=t=>r`<button type="button" @click=${()=>L("run","A cup of the studio",t,Ga(t))}>
    A cup of my studio
  </button>`;function pm(){return St()?r`<div class="row">
    ${mi().map(t=>h({of:"studio",label:`${t} holds`,at:`/cups/${Dt(t)}`,unit:"ml",short:!0,optional:!0}))}
    ${Qw()}
  </div>`:r`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function Qw(){let t=()=>{let e=document.getElementById("new-cup"),n=e.value.trim()||dm();e.value="",L("studio",`${n} added`,`/cups/${Dt(n)}`,"",mt("studio",`/cups/${Dt(n)}`))};return r`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${dm()} />
    </div>
    <button type="button" @click=${t}>Add the cup</button>`}function dm(){for(let t=1;;++t){let e=t===1?"weigh-cup":`weigh-cup ${t}`;if(!mi().includes(e))return e}}var Gw=["ice bath","cold water","fridge","room"].map(t=>[t,t==="room"?"the room":t]),Ya=t=>({run:`/${t}/temperatures`,studio:`/temperatures/${t}`});function Ls(t){let{run:e}=Ya(t);return P({name:e,pointers:[e],summary:"How warm",body:()=>r` <p class="hint">
          ${St()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${lo("How warm",[Ya(t)])} ${H("run",e)} ${Yw(t)}`})}function Yw(t){let{run:e,studio:n}=Ya(t),o=c=>({run:`${e}/${c}`,studio:`${n}/${c}`}),i=l.units==="us"?"\xB0F":"\xB0C",s=(c,d,p=i)=>At(o(c),{label:d,unit:p,optional:!0,takes_part:!0,short:!0}),a=o("cooled_in");return r`<div class="row">
    ${s("room_at","Room and dry alkali")} ${s("water_at","Water")}
    ${s("ice_share","Of the water, as ice","%")} ${s("lye_used_at","Lye when it is used")}
    ${s("fats_at","Fats")} ${s("batter_below","Batter must stay below")}
    ${Rt({label:"The lye cools in",...di(a),answers:Gw,unsaid:"not given",optional:!0})}
  </div>`}var jt=()=>$(l.run.now,"/pipe")!==void 0;function mm(){let t=e=>{let n=C(e,"/pipe",{formula:"",fills_headspace:"",whip:fi()});return St()?n:C(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};st("set-up pipe"),so("run","Topping added",t,I("lane-pipe"))}function Zw(t){let e=Object.keys($(t,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(t,"/batch/whippings")!==void 0&&e?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:C(o,i,void 0),t)}function Xw(){so("run","Topping removed",Zw,I("topping-back"))}function fm(){let t=l.past.at(-1)?.run?.now;return!t||$(t,"/pipe")===void 0||jt()?u:r`<button type="button" id="topping-back" @click=${Zi}>Bring the topping back</button>`}function Za(){return r`${rb()} ${Ls("pipe")}
    <p class="choice"><button type="button" @click=${Xw}>Take the topping away</button></p>`}var tb=["trials","beads","envelope"];function Xa(t){return tb.every(e=>_("run",`/pipe/${e}`)===void 0)&&Ht("run","/pipe",`${lt("run","/pipe/trials")}-add`,"How large the topping is"),r`<h3>How large is the topping?</h3>
    ${H("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${Pe({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:fi()},body:eb})}
      ${Pe({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:nb})}
    </div>
    ${Pe({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:em,body:()=>nm(t)})}
    ${t?ib(t):u}`}function eb(){let t={at:"/pipe/trials/weighed",least:1};return r`<div class="trials">
      ${S(t).map((e,n)=>r`<div class="row" id=${q(t,n)}>
            ${h({label:`Trial ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${Z(t,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${Q(t,"One more trial",()=>K(t,"","trial"))}
    <div class="row">
      ${h({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${hi("/pipe/trials/weigh_cup")}
    </div>
    ${H("run","/pipe/trials/weigh_cup")}`}function nb(){let t="/pipe/envelope",e=_("run",`${t}/form`);return r`${x({question:"Form of the outline",at:`${t}/form`,chosen:e,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${h({label:"Diameter",at:`${t}/diameter`,unit:"mm",short:!0})}
      ${h({label:"Height",at:`${t}/height`,unit:"mm",short:!0})}
      ${h({label:"Share that is soap, not air",at:`${t}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var ob={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function ib(t){let e=t.visible_by;if(!e)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:e[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return r`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},a)=>A({key:`pipe.by.${i}`,label:ob[i],note:o(a),shown:_t(l.units,s),of:`pipe.visible_by.${i}_ml`}))}
    ${sb(t)}`}function sb(t){let e=t.visible_by?.suggested_correction;if(!e||l.is_old)return u;let n=k(e.correction,2),o="/pipe/beads/tip/hand",i=typeof _("run","/pipe/beads/tip")=="object",s=i&&$(l.run.now,`${o}/correction`)!==e.correction,a=()=>L("run","correction kept",o,{correction:e.correction,trials:e.trials});return r`<p>
      Your hand lays down ${n} times the computed beads (${e.trials}
      ${e.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?r`<button type="button" @click=${a}>Keep ${n} for my tip</button>`:u}`}function tl(t){return r`<h3>The whip planned for</h3>
    <div class="row">
      ${h({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${hi("/pipe/whip")}
    </div>
    ${H("run","/pipe/whip")}
    ${t?.loads?r`<p class="aside of-plan">${t.loads} bag loads.</p>`:u}`}function rb(){let t="/pipe/pace",e=(n,o,i,s=!1)=>h({label:n,at:`${t}/${o}`,unit:i,optional:s,short:!0});return P({name:"pace",pointers:[t],summary:"Piping speed",body:()=>Pe({at:t,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>r`<div class="row">
            ${e("Can be piped for","open_time","min")} ${e("To pipe one","time_per_piece","s")}
            ${e("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function ab(t,{at:e,figure:n}){let o=$(t,e),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function Bs(t,e,n){return e?r`<button type="button" @click=${()=>n(e.at,ab(t,e))}>It is really so: keep it</button>`:u}var Es=t=>/^\s*0*[1-9]\d{0,8}\s*$/.test(t)?Number(t):void 0;function Ws(t,e,n){return r`<div class="field short">
    <label for=${t} data-said="required">Pieces to sell</label>
    <input
      id=${t}
      aria-required="true"
      .value=${W(e)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}var hm=t=>[...l.files?.runs??[],...l.files?.formulas??[]].find(e=>e.file===t)?.name||t;function Is(t){let e=t?.used_by??[];return e.length?r`<p class="aside">Used by ${ni(e.map(hm))}.</p>`:u}function Hs(t){let e=t?.used_by??[];return e.length<2?u:r`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${ni(e.map(hm))}: a change here changes
    ${e.length===2?"both":`all ${e.length}`}.
  </p>`}function lb({outline:t,above:e}){let n=Math.max(4,(t.right-t.left)*.06),o=e.flat().map(([,m])=>m),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],a=-t.brim-2*n+i,c=a-s-n,d=[t.left-n,c,t.right-t.left+2*n,-t.floor+n-c],p=(m,g)=>M`<path class="shaded pour" fill-rule="evenodd" d=${g} /><path class="wall ${m}" fill-rule="evenodd" d=${g} />`;return r`<div class="drawing tall">
    <svg
      viewBox=${d.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",Vo(e,a))}${p("side",Vo(t.loops))}
    </svg>
  </div>`}function uo(t,e=!1,n=[]){let o=n.length?r`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!t)return r`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=t,s=i.pockets[0];return r`${lb(t)}
    <p class="order ${e?"old":""}" role="status">
      Holds
      <b>${R(_t(l.units,s.brimful_ml))}</b>${i.pockets.length>1?r` in each of ${i.pockets.length}, ${R(_t(l.units,i.total_ml))} together`:u},
      ${R(pt(l.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?r`<p class="aside">
            ${i.measurements.map(a=>`By ${a.by} ${R(_t(l.units,a.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?r`<ul class="limits">
            ${i.notes.map(a=>r`<li>${a.text}</li>`)}
          </ul>`:u}`}var ub={mm:"in",g:"oz","\xB0C":"\xB0F"},cb={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function js(t,e,n=""){let o=el(t);if(o)return o.unit??"";let i=_e($(D(),t));return cb[e]?.test(i)?i:n||(l.units==="us"?ub[e]??e:e)}var Ns=()=>f({typed:void 0}),co=t=>`d${t.replaceAll("/","-")}`,el=t=>l.typed?.key===co(t)?l.typed:void 0,qs=t=>el(t)?.text??String($(D(),t)??"");function Ye(t){let{complaint:e}=B();return e&&(e.field===t||e.field.startsWith(`${t}/`))?e.line:void 0}function nl(t,e,n,o){let{pointer:i}=t,s=a=>{let c=a.target.value,d=t.unit?js(i,t.unit,t.unit_before):"";f({typed:{key:co(i),text:c,unit:d}}),dt(i,db(t,c,d))};return r`<input
    id=${co(i)}
    .value=${W(qs(i))}
    @input=${s}
    @blur=${Ns}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${t.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${e??u}
    aria-invalid=${Ye(i)?"true":"false"}
  />`}function db(t,e,n){if(!((t.optional||t.count)&&!e.trim()))return t.count&&/^\s*\d{1,6}\s*$/.test(e)?Number(e):n&&Je(e)?`${e.trim()} ${n}`:e}function Nt(t,e){let n=co(t.pointer),o=Ye(t.pointer),i=pb(t.pointer)??t.hint,s=t.unit?` (${js(t.pointer,t.unit,t.unit_before)})`:"";return r`<div class="field ${t.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${t.label}${s}</label> ${nl(t,o||i?`${n}-said`:void 0,e)}
    ${Tt(n,o,i)}
  </div>`}function pb(t){let e=$(D(),t),n=el(t);if(!(!n?.text.includes("/")||typeof e!="string"||e===n.text))return`taken as ${e}`}function Us(t){let e=t.toLowerCase(),{file:n,shipped:o}=B().open,i=o?"":n;return l.files?.moulds.find(s=>s.file!==i&&s.name.trim().toLowerCase()===e)?.file}async function gi(t){let{open:e}=B();try{if(await me(e),e.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await Sn()})}catch(n){if(!(n instanceof v))throw n;return _a(n)}l.run.file&&(se(),Y()),t(e.file)}var Me="/shape/points",gm=500,Ze=(t,e)=>[Me,t,...e?[e]:[]].join("/"),_m=t=>Array.from({length:t.least},()=>({}));function $m(t){let e=It(D(),Me),n=fb(),{complaint:o}=B(),i=o?.field===Me&&!o.about?o.line:void 0;return r`<h3 id="points-title">Points</h3>
    <p class="hint">${t.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${t.columns.map(s=>r`<span
              >${s.label} (${js(Ze(-1,s.name),s.unit,wm(t,e.length,s.name))})</span
            >`)}
      </div>
      ${e.map((s,a)=>mb(t,a,n))}
    </div>
    ${i?r`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${e.length>=gm} @click=${()=>Js(t,e.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function mb(t,e,n){let o=n.has(e)?`point ${n.get(e)}`:"empty point",i=hb(e),s=a=>{let{name:c,label:d,unit:p}=t.columns[a],m={label:d,pointer:Ze(e,c),unit:p,unit_before:wm(t,e,c)},g=`${d}, ${n.has(e)?o:`point ${e+1}`}`;return nl(m,i?`point-${e}-said`:void 0,gb(t,e,a),g)};return r`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(e)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>Js(t,e)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>bm(t,e)}>×</button>
    ${i?r`<p id="point-${e}-said" class="complaint">${i}</p>`:u}
  </div>`}function fb(){let t=[...Co(D()),...qi(D())].sort((e,n)=>e-n);return new Map(t.map((e,n)=>[e,n+1]))}function hb(t){let{complaint:e}=B();return Ye(Ze(t))??(e?.about===Ze(t)?e.line:void 0)}function wm(t,e,n){let o=(i,s)=>_e($(D(),Ze(i,s)));for(let i=e-1;i>=0;--i)if(o(i,n))return o(i,n);return t.columns.map(({name:i})=>o(e,i)).find(Boolean)??""}function zs(t,e){queueMicrotask(()=>document.getElementById(co(Ze(t,e)))?.focus())}function Js(t,e){let n=[...It(D(),Me)];n.length>=gm||(n.splice(e,0,{}),Ns(),dt(Me,n),zs(e,t.columns[0].name))}function bm(t,e,n=0){let o=It(D(),Me).filter((i,s)=>s!==e);Ns(),dt(Me,o.length?o:[{}]),zs(Math.max(0,Math.min(e-(n?1:0),o.length-1)),t.columns[n].name)}function gb(t,e,n){let[o,i]=t.columns.map(({name:s})=>s);return s=>{let a=!qs(Ze(e,o))&&!qs(Ze(e,i));if(s.key==="Enter"&&s.shiftKey)Js(t,e+1);else if(s.key==="Enter"&&n===0)zs(e,i);else if(s.key==="Enter"&&e+1<It(D(),Me).length)zs(e+1,o);else if(s.key==="Enter")Js(t,e+1);else if(s.key==="Backspace"&&a&&It(D(),Me).length>1)bm(t,e,e>0?1:0);else return;s.preventDefault()}}var ol={weighings:[""]},il=/\.(3mf|gltf|glb)$/i;function Vs(t){let e=Ee(t);return e?{kind:t,points:_m(e)}:{kind:t}}var _b=()=>dt("/water",ol),we=t=>ee(D(),t),_i=()=>Fo(D());function ym(t){let{open:e,answer:n,is_old:o}=B();return r`${to(e,()=>{gi(t)})} ${eo(e)}
    ${e.shipped?u:Hs(l.files?.moulds.find(i=>i.file===e.file))}
    ${we("shape")&&we("mesh")?r`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${we("shape")?ot("Shape",_i(),Object.entries(oc),$b):u}
    <div class="beside ${Ee(_i())?"rows":""}">
      <div>
        ${sl()} ${we("shape")?bb():u} ${we("mesh")?yb():u}
        ${rl()} ${we("water")?kb():u} ${Tb()}
      </div>
      <div class="stays">${uo(n,o,km())} ${Rb(t)}</div>
    </div>`}function $b(t){let e={...B().shapes,[_i()]:D().shape};y(B(),{shapes:e,answer:void 0}),dt("/shape",e[t]??Vs(t))}function wb(){let{shipped:t,file:e}=B().open;return t?l.files?.moulds.find(n=>n.file===e)?.name??e:void 0}function sl(){let t=wb();return Nt({label:"What you call it",pointer:"/name",wide:!0,hint:t?`${t} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function bb(){let t=_i(),e=Ee(t);return r`${On(t).length?r`<div class="row">
          ${On(t).map(n=>Nt({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${e?$m(e):u}`}function rl(t=Pr(D())){return r`<div class="row">
      ${t?u:Nt({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${Nt({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${Nt({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${Nt({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var al=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],ll=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function yb(){let t=o=>String($(D(),`/mesh/${o}`)??""),e=(o,i,s)=>{let a=Ye(`/mesh/${i}`);return r`<h4>${o}</h4>
      ${ot(o,t(i),s,c=>dt(`/mesh/${i}`,c||void 0))}
      ${a?r`<p class="complaint">${a}</p>`:u}`},n=Ye("/mesh/file");return r`<h3>Its mesh <small>${t("file")}</small></h3>
    ${n?r`<p class="complaint">${n}</p>`:u}
    ${il.test(t("file"))&&!t("unit")?u:e("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${e("What it shows","role",al)} ${e("Which way is up","up",ll)}
    ${t("role")==="body"?vb():u}
    <div class="row">
      ${Nt({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${Nt({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function vb(){let t=$(D(),"/mesh/on_board")===!0?"yes":"no";return r`<h4>Open below, and stood on a board?</h4>
    ${ot("Stood on a board",t,[["no","No"],["yes","Yes, the board closes it"]],e=>dt("/mesh/on_board",e==="yes"?!0:void 0))}`}function kb(){let t=$(D(),"/water/filled_to"),e=t===void 0?void 0:t==="brim"?"brim":$(t,"/depth")!==void 0?"depth":"below_brim",n=s=>dt("/water/filled_to",s==="brim"?"brim":{[s]:""}),o=$(D(),"/water/weighed_in"),i=e===void 0||e==="brim"?Ye("/water/filled_to"):void 0;return r`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${Nt({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${ot("Filled to",e,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?r`<p class="complaint">${i}</p>`:u}
    ${e==="depth"?Nt({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${e==="below_brim"?Nt({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${ot("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>dt("/water/weighed_in",s))}
    <div class="row">
      ${It(D(),"/water/weighings").map((s,a)=>Nt({label:`Water, round ${a+1}`,pointer:`/water/weighings/${a}`,unit:"g"},xb(a)))}
    </div>
    ${B().complaint?.field==="/water/weighings"?r`<p class="complaint">${B().complaint.line}</p>`:u}
    <button type="button" @click=${vm}>One more round</button>`}function vm(){let t=It(D(),"/water/weighings").length;dt(`/water/weighings/${t}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${t}`)?.focus())}var xb=t=>e=>{e.key==="Enter"&&(t+1===It(D(),"/water/weighings").length?vm():document.getElementById(`d-water-weighings-${t+1}`)?.focus())};function Tb(){let t=(e,n)=>r`<button type="button" @click=${n}>${e}</button>`;return r`<div class="choice">
    ${we("shape")?u:t("Add measures, as a check",()=>dt("/shape",Vs("block")))}
    ${we("shape")&&we("mesh")?t("Leave the measures out",()=>dt("/shape",void 0)):u}
    ${we("water")?t("Leave the water out",()=>dt("/water",void 0)):t("Add weighed water",_b)}
  </div>`}function km(){let t=qi(D()).length;return t?[...Lo(D()),t===1?"the other number of a point":`the other numbers of ${t} points`]:Lo(D())}function Rb(t){let e=String(D().name??"").trim(),n=Us(e),{open:o,answer:i,is_old:s,complaint:a}=B(),c=i&&!s&&!a&&!km().length&&e&&!n,d=o.shipped?"":o.file;return r`<button type="button" class="strong" ?disabled=${!c} @click=${()=>{gi(t)}}>
      ${d?"Save the change":"Use this mould"}
    </button>
    ${d?r`<p class="aside">It stays in ${d}.</p>`:u}
    ${e?u:r`<p class="hint">Give it a name first.</p>`} ${ul(e,n)}
    ${a?r`<p class="alarm" role="status">${Sb(a.field)}${a.line}</p>
            ${Bs(D(),a.keep,dt)}`:u}`}var ul=(t,e)=>e?r`<p class="complaint" role="status">
        Another mould is called ${t} already (${e}); give this one a name of its own.
      </p>`:u;function Sb(t){let[,e]=/^\/shape\/points\/(\d+)/.exec(t)??[];if(e)return`Point ${Number(e)+1}: `;if(t==="/shape/points")return"";let n=On(_i()).find(({name:s})=>t===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${t.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:t?`${t.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var Ab=200*2**20;async function xm(t){if(!t)return;let e={name:t.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:e}),dt("/name",t.name.replace(/\.\w+$/,"")),t.size>Ab){let n=`${t.name} has ${Math.ceil(t.size/1048576)} MiB`;return y(e,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await xu(t,o=>y(e,{share:o}));y(e,{share:1,upload:n.file}),await Rm(e)}catch(n){y(e,{complaint:n instanceof v?n.message:String(n)})}}async function Rm(t){let e=t.questions+1;y(t,{questions:e,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:s}=t;try{let a=await Kn({file:n,unit:o,role:i,up:s});e===t.questions&&y(t,{answer:a,is_measuring:!1})}catch(a){if(!(a instanceof v))throw a;if(e!==t.questions)return;let c=o?t.sizes:Ob(a.complaint),d=c.length&&!o?void 0:U(a.complaint);y(t,{sizes:c,complaint:d,is_measuring:!1})}}async function Pb(t){let{questions:e,upload:n,unit:o,up:i}=t;try{let s=await wu({file:n,unit:o,up:i});e===t.questions&&y(t,{inspection:s})}catch(s){if(!(s instanceof v))throw s;e===t.questions&&y(t,{complaint:U(s.complaint)})}}function Db(t){return t.inspection?r`<h4>Every defect of the mesh</h4>
    ${t.inspection.defects.length?r`<ul>
            ${t.inspection.defects.map(Mb)}
          </ul>`:r`<p>None.</p>`}`:r`<button type="button" @click=${()=>{Pb(t)}}>List every defect of the mesh</button>`}var Mb=({text:t})=>r`<li>${t}</li>`;function Ob({asks:t,choices:e=[]}){if(t!=="unit")return[];let n=o=>(o??[]).map(i=>k(i,2)).join(" \xD7 ");return e.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function cl(t,e){y(t,e),Rm(t)}function Sm(t,e){let n=a=>{let c=a.target;xm(c.files?.[0]),c.value=""},o=a=>{a.preventDefault(),xm(a.dataTransfer?.files[0])},[i,s]=l.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return r` <div class="drop" @dragover=${a=>a.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${s} @change=${n} />
    </div>
    ${l.mesh?Fb(l.mesh,t,e):u}`}function Fb(t,e,n){let i=(t.sizes.length?t.sizes:[["mm",""],["cm",""],["in",""]]).map(([s,a])=>[s,a?`${s}: ${a} ${s}`:s]);return r` <h3>${t.name}</h3>
    ${t.share<1&&!t.complaint?r`<label for="sent">Sending, ${Math.round(100*t.share)} %</label
            ><progress id="sent" max="1" .value=${t.share}></progress>`:u}
    ${t.is_measuring?r`<p role="status">Measuring ...</p>`:u}
    ${t.upload&&!il.test(t.name)?r`<h4 id="unit-title">${t.unit?"Its unit":"Which size is it?"}</h4>
            ${ot("Unit of the file's numbers",t.unit,i,s=>cl(t,{unit:s}))}`:u}
    ${t.complaint?r`<p class="alarm" role="alert">${t.complaint}</p>`:u}
    ${t.upload&&!t.is_measuring&&(t.complaint||t.answer)?Db(t):u}
    ${t.upload&&(t.unit||t.answer)?r`<h4>What it shows</h4>
            ${ot("Role",t.role??t.answer?.gauge.role,al,s=>cl(t,{role:s}))}
            <h4>Which way is up</h4>
            ${ot("Up",t.up??"",ll,s=>cl(t,{up:s||void 0}))}`:u}
    ${t.answer?r`${uo(t.answer)} ${Cb(t,e,n)}`:u}`}var Am=t=>t.answer.gauge.role!=="cavity"||t.answer.gauge.pockets.length>1;function Cb(t,e,n){let o=String(D().name??"").trim(),i=Us(o),s=o&&!i&&!t.is_keeping;return r`${sl()} ${rl(Am(t))} ${ul(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${()=>Tm(t,n,e)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${t.is_keeping} @click=${()=>Tm(t,n)}>More settings</button>
    </div>
    ${t.is_keeping?r`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function Tm(t,e,n){y(t,{is_keeping:!0});try{let o=Lb(t,await Tu(t.upload,Eb(t.name)));if(!n||t.answer.gauge.pockets.length>1&&!await Bb(o))return e(o);Gn(o,"mesh",B().title),await gi(n),y(t,{complaint:l.mould?.complaint?.line})}catch(o){y(t,{complaint:o instanceof v?o.message:String(o)})}y(t,{is_keeping:!1})}function Lb(t,e){let n={file:e,role:t.answer.gauge.role};t.unit&&(n.unit=t.unit),t.up&&(n.up=t.up);let{cavities:o,...i}=D();return{...i,...Am(t)||o===void 0?{}:{cavities:o},mesh:n}}async function Bb(t){try{return await Fe({file:"new.mould.json",mould:t}),!0}catch(e){if(e instanceof v&&e.status===422)return!1;throw e}}var Eb=t=>Mn(t.replaceAll(/[^\w.-]+/g,"_"),l.files?.meshes??[]);var Ks={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},Pm={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function Dm(t){fe();let e={...Pm,shape:Vs("block")};t==="mesh"?Gn(Pm,"mesh",Ks[t]):Gn(t==="water"?{...e,water:ol}:e,"form",Ks[t]),Gs()}async function Mm(t,e){fe(),await Zd(t,e),Gs()}async function Qs(t){fe(),await Xd(t),Gs()}function Wb(t){Gn(t,"form","More about this mould"),Gs()}function Gs(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function Om(t){if(!l.mould)return;let{way:e,title:n}=l.mould;return r`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${e==="mesh"?Sm(t,Wb):ym(t)}
  </section>`}var dl=()=>f({chosen_mould:void 0});function $i(t,e){let n=l.files?.moulds.find(s=>s.file===t),o=l.catalogue.find(s=>s.path===t),i={file:t,name:n?.name||o?.name||t,note:n?.note??"",shipped:n?.shipped??!0,sell:"",told:e};f({chosen_mould:i}),Ib(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function Ib(t){try{y(t,{answer:await Kn({file:t.file})})}catch(e){y(t,{complaint:e instanceof v?e.message:String(e)})}}var Hb=t=>l.files?.moulds.find(e=>e.file===t);function Fm(t,e){let n=()=>e(async()=>{await Mm(t.file,t.shipped),dl()});return r`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${t.name} <small>${t.shipped?"built-in":`your own, ${t.file}`}</small>
    </h2>
    ${t.told?r`<p role="status">${t.told}</p>`:u} ${t.note?r`<p>${t.note}</p>`:u}
    ${Is(Hb(t.file))}
    ${t.complaint?r`<p class="alarm" role="alert">It cannot be measured: ${t.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${t.answer?uo(t.answer):t.complaint?u:r`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${t.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${t.complaint?u:jb(t,e)}
    </div>
  </section>`}function jb(t,e){let n=Es(t.sell),o=i=>()=>e(()=>ds({mould:t.file,name:t.name,formula:i,sell:n}));return r`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    ${Ws("mould-sell",t.sell,i=>y(t,{sell:i}))}
    ${n?u:r`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(l.files?.formulas??[]).map(i=>r`<li>
            <button type="button" ?disabled=${!t.answer||!n} @click=${o(i.file)}>
              <b>${i.name}</b><span>${i.note||i.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function wi(){let{view:t,run:e,formula_of:n,formulas:o,mould:i,chosen_mould:s}=l;if(t!=="reading")return be(t)?{name:t,file:e.file,of:e}:t==="moulds"&&i?{name:"describing",file:i.open.id,of:i}:t==="moulds"&&s?{name:"chosen",file:s.file,of:s}:t!=="formula"?{name:t}:n==="apart"?{name:"formula",file:o.apart?.file,of:o.apart}:{name:So[n],file:e.file,of:e}}async function Lm({name:t,file:e}){if(!(!(t===So.apart&&l.formulas.apart?.file===e)&&!await ps()))try{await Nb(t,e)}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o;f({view:"runs",list_complaint:o.message})}}async function Nb(t,e=""){let n=t;if(be(n))return Cm(e,n);let o=["pour","pipe"].find(i=>So[i]===t);if(o)return await Cm(e,"formula"),Vt(o);if(t===So.apart)return Xo(e);await qb(t,e)}async function Cm(t,e){t===l.run.file||!t?f({view:l.run.file?e:"runs",typed:void 0}):await qe(t,e)}async function qb(t,e){let n=t;dl(),fe(),f({view:Xt(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,fault:void 0});let o=Qi(Ot).find(i=>i.id===e);t==="describing"&&o&&await Qs(o),t==="chosen"&&$i(e),Ub()}async function Ub(){try{f({files:await Sn()}),us()}catch(t){if(!(t instanceof v))throw t;f({list_complaint:t.message})}}var qt={id:""},kt,pl=!1,fl=new Map,Ys=JSON.parse(sessionStorage.getItem("left")??"{}");function Em(){let t=wi();pl||!t||kt&&ue(kt)===ue(t)||(Zs(),Wm(t))}function Wm(t){let e=!kt||kt.name===t.name&&kt.of!==void 0&&kt.of===t.of;if(kt=t,e)return po();qt={id:crypto.randomUUID(),before:location.hash},fl.set(qt.id,t.of),history.pushState(qt,"",ue(t)),requestAnimationFrame(Jb)}function po(){kt&&(qt.id||(qt={id:crypto.randomUUID()}),fl.set(qt.id,kt.of),history.replaceState(qt,"",ue(kt)))}var zb="button, input, select, summary, a[href], [tabindex]",ml=t=>t.id||(t.getAttribute("aria-label")??t.textContent).trim(),Im=t=>[...document.querySelectorAll(`#main :is(${zb})`)].filter(e=>ml(e)===t);function Zs(){let t=document.activeElement;!t?.closest("#main")||t.id==="main"?Ys[qt.id]={scroll:scrollY}:Ys[qt.id]={scroll:scrollY,words:ml(t),nth:Im(ml(t)).indexOf(t)}}function Jb(){scrollTo(0,0),document.activeElement?.closest("#main")||Hm()}function Hm(){let t=document.querySelector("#main h1");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}))}function jm(){let{scroll:t,words:e,nth:n=0}=Ys[qt.id]??{scroll:0},o=e===void 0?void 0:Im(e)[n];o?o.focus({preventScroll:!0}):Hm(),scrollTo(0,t)}var mo=t=>Nm({name:t,file:be(t)?l.run.file:void 0});async function Nm(t){Zs(),await hl(t,()=>{let e=wi();e&&!(kt&&ue(kt)===ue(e))&&Wm(e)})}async function hl(t,e){pl=!0;try{await Lm(t)}finally{pl=!1,e()}}function qm(t){qt.before===ue(t)?history.back():Nm(t)}var Bm=Promise.resolve();function Vb(t,e){Zs();let n=()=>history.state?.id!==t?.id;Bm=Bm.then(async()=>{if(!e)return po();if(n())return;let o=t?fl.get(t.id):void 0,i=[l.run,l.formulas.apart].find(s=>s&&s===o);await hl(i?{...e,file:i.file}:e,()=>{kt=wi(),!n()&&(qt=t??{id:crypto.randomUUID()},po(),requestAnimationFrame(jm))})})}function Um(){history.scrollRestoration="manual",addEventListener("popstate",t=>{uu()||Vb(t.state,pr(location.hash))}),addEventListener("pagehide",()=>{Zs(),sessionStorage.setItem("left",JSON.stringify(Ys))})}async function zm(){let t=pr(location.hash);t&&(qt=history.state??{id:""}),await Ud(Au(t)),t&&Kb(t)&&await hl(t,()=>{kt=wi(),po(),requestAnimationFrame(jm)}),await zd()}var Kb=t=>!kt||ue(kt)===ue(t);function fo(t=l.plan?"The figures below are out of date.":"No figures yet."){let e=Os()?void 0:l.complaint;return r`<div class="complaints" role="status">
      ${e?r`<p class="alarm">
                <strong>${t}</strong>
                ${bi(e.field)}${U(e)}
              </p>
              ${e.is_fault?r`<button type="button" @click=${gl}>Ask again</button>`:u}
              ${Ae("run")?Bs(l.run.now,e.keep,(n,o)=>j("run",n,o)):u}
              ${Qb()?r`<button type="button" @click=${_l}>Go to the field</button>`:u}`:u}
    </div>
    ${ui()}`}function bi(t){let e=t.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return e.length?`${e.join("").slice(2)}: `:""}function gl(){Y(),l.run.failed&&oe()}function Qb(){if(Jm())return!0;let t=yn();return t?document.activeElement!==t:Gb()}var Gb=()=>l.view!=="set-up"&&Ae("run")&&l.complaint!==void 0&&l.complaint.field!=="",Jm=()=>["pour","pipe"].find(t=>l.complaint?.file&&l.complaint.field&&Ae(t));function _l(){let t=yn(),e=Jm();if(t)return Ts(t);e?Vt(e):mo("set-up"),Yb(()=>Ts(yn()))}function Yb(t){requestAnimationFrame(()=>requestAnimationFrame(t))}var Vm=()=>[...is().map(t=>to(t)),...os().map(eo)];function Km(){let t=l.formula_of,e=l.formulas[t];if(!e)return r`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${Vm()}${fo()}
      <p>Reading the formula ...</p>
      ${wl(t)}`;let n=l.plan&&Yn(l.plan),o=t==="pipe"?n?.whippings[0]:n?.pour;return r`${Vm()}
    <h1 id="formula-title" tabindex="-1">${String(e.now.name||"Unnamed formula")}</h1>
    <p class="aside">${Zb(t)}</p>
    <div class="choice">${wl(t)}${t==="apart"?Xb():u}</div>
    ${Hs(l.files?.formulas.find(i=>i.file===e.file))} ${ty(t,o,n)} ${Gm(t)}
    ${La(t)} ${Ba(t,o)} ${Wa(t)} ${Aa(t)}
    <div class="choice">${wl(t)}</div>`}var Qm=t=>[Gm(t),La(t),Ba(t,void 0),Wa(t),Aa(t)],$l=()=>String(l.run.now.name??l.run.file);function Zb(t){let e=l.formulas[t],n=e.shipped?" Built-in: your first change is saved as a copy.":"",o=l.formulas.pour===e&&l.formulas.pipe===e;return t==="apart"?`Opened on its own; the figures are for a base of "${$l()}".${n}`:o?`Base and topping of "${$l()}" are both made of it.${n}`:`${t==="pour"?"Base":"Topping"} of "${$l()}".${n}`}function wl(t){let e=t==="apart";return r`<button type="button" class="strong" @click=${()=>qm(e?{name:"formulas"}:{name:l.came_from,file:l.run.file})}>
    ${e?"Close the formula":"Back to the run"}
  </button>`}function Xb(){return r`<button type="button" @click=${()=>{ca("pour")}}>Use it as the base</button> ${jt()?r`<button type="button" @click=${()=>{ca("pipe")}}>Use it as the topping</button>`:u}`}function ty(t,e,n){return r`<section class="strip" aria-label="What comes of it">
    ${e&&n?r`<dl>
            ${[...ey(t,n),...ny(t,e)].map(([o,i,s])=>r`<div class=${l.is_old?"old":""}>
                  <dt>${o} ${s?ze(s):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${oy(t)}
  </section>`}function ey(t,e){let n=t==="pipe"?wa(e,e.whippings[0]):"";return n?[["For one whipping",n]]:bt(e.whole)?[["For one batch",he(e.whole,e.batch)]]:[]}function ny(t,e){let n=Ue(t).length?" \u26A0":"";return[["Fats",R(O(l.units,e.fats_g))],["Superfat as weighed",`${Kt(e.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...ws(e).map(({one:o})=>[o.name,R(wn(l.units,o))])]}function oy(t){let e=Os()?void 0:l.complaint;if(!e)return r`<div role="status"></div>
      ${ui()}`;let n=Ae(t),o=n&&e.field!==""&&document.activeElement!==yn();return r`<div role="status" class="asks">
      <p class="alarm">
        <strong>${l.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${bi(e.field)}${U(e)}
      </p>
      ${e.is_fault?r`<button type="button" @click=${gl}>Ask again</button>`:u}
      ${o?r`<button type="button" @click=${()=>yn()?.focus()}>Go to the field</button>`:u}
    </div>
    ${ui()}`}function Gm(t){return r`<section class="card" aria-label="Name">
    ${h({label:"Name",of:t,at:"/name",wide:!0})}
    ${P({of:t,name:"note",pointers:["/note"],summary:"Your note",body:()=>h({label:"Note",of:t,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Ym=(t,e,n)=>{let o=new Map;for(let i=e;i<=n;i++)o.set(t[i],i);return o},Xs=bs(class extends no{constructor(t){if(super(t),t.type!==Se.CHILD)throw Error("repeat() can only be used in text expressions")}dt(t,e,n){let o;n===void 0?n=e:e!==void 0&&(o=e);let i=[],s=[],a=0;for(let c of t)i[a]=o?o(c,a):a,s[a]=n(c,a),a++;return{values:s,keys:i}}render(t,e,n){return this.dt(t,e,n).values}update(t,[e,n,o]){let i=xp(t),{values:s,keys:a}=this.dt(e,n,o);if(!Array.isArray(i))return this.ut=a,s;let c=this.ut??=[],d=[],p,m,g=0,w=i.length-1,b=0,T=s.length-1;for(;g<=w&&b<=T;)if(i[g]===null)g++;else if(i[w]===null)w--;else if(c[g]===a[b])d[b]=Ke(i[g],s[b]),g++,b++;else if(c[w]===a[T])d[T]=Ke(i[w],s[T]),w--,T--;else if(c[g]===a[T])d[T]=Ke(i[g],s[T]),oo(t,d[T+1],i[g]),g++,T--;else if(c[w]===a[b])d[b]=Ke(i[w],s[b]),oo(t,i[g],i[w]),w--,b++;else if(p===void 0&&(p=Ym(a,b,T),m=Ym(c,g,w)),p.has(c[g]))if(p.has(c[w])){let J=m.get(a[b]),Et=J!==void 0?i[J]:null;if(Et===null){let rn=oo(t,i[g]);Ke(rn,s[b]),d[b]=rn}else d[b]=Ke(Et,s[b]),oo(t,i[g],Et),i[J]=null;b++}else vs(i[w]),w--;else vs(i[g]),g++;for(;b<=T;){let J=oo(t,d[T+1]);Ke(J,s[b]),d[b++]=J}for(;g<=w;){let J=i[g++];J!==null&&vs(J)}return this.ut=a,ys(t,d),Pt}});async function Lt(t){f({list_complaint:""});try{await t()}catch(e){f({list_complaint:e instanceof Error?e.message:String(e)}),e instanceof v&&await He().catch(()=>{})}}var bl=()=>{Lt(Ic)};function ho(t){return r`<h1 tabindex="-1">${t}</h1>
    ${l.list_complaint?r`<p class="alarm" role="alert">${l.list_complaint}</p>`:u}
    ${l.list_told&&Ho()?r`<p class="told" role="status">
            ${l.list_told} <button type="button" @click=${bl}>Undo</button>
          </p>`:u}
    ${(l.files?.cut??[]).map(e=>r`<p class="alarm">
          More lies in ${e.folder} than is looked at: ${e.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Zm=new Map,Xm=Promise.resolve();function tf(t,e=""){let n=`${t}
${e}`,o=Zm.get(n);return o||(o=Xm.then(()=>iy(t)),Xm=o,Zm.set(n,o)),o}async function iy(t){try{let e=await Ce({kind:"glb",gauge:{file:t}}),n=Vn(await e.arrayBuffer());return Ko(n.find(o=>o.name==="cavity")??n[0])}catch(e){if(e instanceof v)return;throw e}}var yl=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#t=new IntersectionObserver(([e])=>e.isIntersecting&&this.#e(),{rootMargin:"200px"});connectedCallback(){this.#t.observe(this)}disconnectedCallback(){this.#t.disconnect()}attributeChangedCallback(){this.#t.disconnect(),this.isConnected&&this.#t.observe(this)}#e(){this.#t.disconnect();let e=this.getAttribute("file")??"";requestIdleCallback(()=>{tf(e,this.getAttribute("changed")??"").then(n=>{e===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let e=this.#n;if(!e)return void ce(u,this);let{left:n,right:o,floor:i,brim:s,loops:a}=e,c=.04*Math.max(o-n,s-i),d=[n-c,-s-c,o-n+2*c,s-i+2*c];ce(r`<svg viewBox=${d.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${Vo(a)} />
      </svg>`,this)}};customElements.define("mould-picture",yl);var Tn=(t,e)=>r`<ul class="cards">
    ${Xs(t,({file:n})=>n,e)}
  </ul>`;function go(t){let{one:e,facts:n,picture:o,open:i}=t,s=l.list_open?.file===e.file?l.list_open:void 0,a=e.name||e.file;return r`<li class="file">
    <button type="button" class="open" @click=${()=>{Lt(i)}}>
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
      @click=${()=>sy(t,!s)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${s?ry(t,s):u}
  </li>`}function sy({one:t},e){let{file:n,name:o,note:i}=t;f({list_open:e?{file:n,name:o,note:i,stem:jo(n)}:void 0})}function ry(t,e){let{kind:n,one:o}=t,i=r`<button type="button" @click=${()=>{Lt(()=>ly(n,o))}}>Copy</button>`;if(o.shipped)return r`<div class="acts"><div class="choice">${i}</div></div>`;let s=["name","note"].every(c=>o[c]===e[c])&&jo(o.file)===e.stem,a=()=>{Lt(()=>uy(t,e))};return r`<div class="acts">
    ${Is(o)} ${vl("Name",e,"name")} ${vl("Note",e,"note")}
    ${vl("Name of the file",e,"stem")}
    <div class="choice">
      <button
        type="button"
        class="strong"
        ?disabled=${s||!e.name.trim()||!e.stem.trim()}
        @click=${a}
      >
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{Lt(()=>ef(o,e,!1))}}>Remove</button>
    </div>
    ${e.used_by?ay(o,e):u}
  </div>`}function vl(t,e,n){let o=`list-${n}`,i=s=>y(e,{[n]:s.target.value});return r`<div class="field">
    <label for=${o}>${t}</label>
    <input id=${o} .value=${W(e[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function ay(t,e){return r`<div role="alert">
    <p class="alarm">${e.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{Lt(()=>ef(t,e,!0))}}>Remove it even so</button>
  </div>`}async function ly(t,e){let n=await Hc(t,e),o=l.files?.[t.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:jo(n)}}),requestAnimationFrame(()=>document.getElementById("list-name")?.select()))}async function uy({kind:t,one:e},{name:n,note:o,stem:i}){await qc(t,e,{name:n.trim(),note:o.trim(),stem:i.trim()}),f({list_open:void 0})}async function ef(t,e,n){let o=t.used_by??[];if(o.length&&!n)return y(e,{used_by:o});try{await Uc(t,n),f({list_open:void 0})}catch(i){let s=i instanceof v?i.answer.used_by:void 0;if(!s)throw i;y(e,{used_by:s})}}var kl=t=>y(l.new_formula,t);function nf(){let{name:t,copied:e}=l.new_formula,n=[...l.files?.formulas??[]].sort((i,s)=>Number(i.shipped)-Number(s.shipped)),o=i=>()=>Lt(async()=>{await i(t.trim()),kl({name:"",copied:""})});return r`${ho("Formulas")}
    <section aria-label="Formulas">
      ${Tn(n,cy)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${W(t)}
            @input=${i=>kl({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t.trim()} @click=${o(Vd)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>kl({copied:i.target.value})}
          >
            <option value="" .selected=${W(e==="")}>choose ...</option>
            ${n.map(i=>r`<option value=${i.file} .selected=${W(i.file===e)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!t.trim()||!e}
          @click=${o(i=>Kd(e,i))}
        >
          Make the copy
        </button>
      </div>
      ${t.trim()?"":r`<p class="hint">A new formula needs a name first.</p>`}
    </section>`}function cy(t){let e=t.changed?[`changed ${Xn(t.changed)}`]:[];return go({kind:Fn,one:t,facts:e,open:()=>Xo(t.file)})}function dy(t){fe(),$i(t,`Saved in ${t}.`)}function of(){let{chosen_mould:t}=l;return r`${ho("Moulds")}
  ${t?Fm(t,Lt):Om(dy)??r`${hy()} ${py()}`}`}function py(){let t=(l.files?.moulds??[]).filter(n=>!n.shipped),e=l.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return r`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Tn([...t,...e],my)}
  </section>`}function my(t){let e=t.shipped?fy(t.file):$y(t.file),n=()=>Promise.resolve($i(t.file));return go({kind:Ot,one:t,facts:e,picture:t.file,open:n})}var fy=t=>l.catalogue.filter(e=>e.path===t).map(e=>`${R(_t(l.units,e.brimful_ml))}, ${at(e.cavities,"cavity","cavities")}; ${e.description}`);function hy(){return r`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${gy()}
    <div class="choice">
      ${Object.entries(Ks).map(([t,e])=>r`<button type="button" @click=${()=>Dm(t)}>${e}</button>`)}
    </div>
  </section>`}function gy(){return Qi(Ot).map(t=>{let e=String(rt(t.text)?.name??"").trim()||_y(t)||"a mould without a name yet";return r`<div class="banner">
      <p>Your unsaved mould <b>${e}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>Lt(()=>Qs(t))}>Continue</button>
        <button type="button" @click=${()=>{We(Ot,t.id),z()}}>Discard it</button>
      </div>
    </div>`})}var _y=({file:t})=>l.files?.moulds.find(e=>e.file===t)?.name;function $y(t){let e=Ad(t);return e?"complaint"in e?[`it cannot be measured: ${e.complaint}`]:[R(_t(l.units,e.brimful_ml)),at(e.cavities,"cavity","cavities")]:["measuring ..."]}function sf(){let t=wy();if(t)return t;let{run:e}=l,n=l.formula_of==="apart"||!(N(e)||e.theirs||e.failed);return l.view==="formula"&&n?by():e.theirs?lf(e):e.failed?Tl(`Not saved: ${e.failed}`):N(e)?af:xl(e.shipped?rf:`Saved in ${e.file}`)}var rf="Built-in example: your first change is saved as a copy.",af={words:"Saving ...",is_kept:!1},xl=t=>({words:t,is_kept:!0}),Tl=t=>({words:t,is_kept:!1,is_failed:!0}),lf=t=>Tl(hn(t)?`Not saved: ${t.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);function wy(){let t=l.formulas.apart?"apart":"run",e=xe(t);if(e)return lf(e);if((t==="apart"?[l.formulas.apart]:[l.formulas.pour,l.formulas.pipe]).some(o=>o&&N(o)))return l.complaint?.file===""?Tl(`Not saved: ${l.complaint.problem}`):af}function by(){let t=l.formulas[l.formula_of];return xl(t?t.shipped?rf:`Saved in ${t.file}`:"")}function tr(){let{view:t,mould:e,past:n,future:o}=l;return t==="moulds"&&e?uf(e,tp,ep):Xt(t)?{undo:Ho()&&bl}:uf({past:n,future:o},Zi,Ac)}var uf=({past:t,future:e},n,o)=>({undo:t.length?n:void 0,redo:e.length?o:void 0});var cf={runs:"Runs",formulas:"Formulas",moulds:"Moulds"},yy={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},vy="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",ky="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",Rl=t=>r`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${M`<path d=${t} />`}</svg>`;function df(){let t=l.view==="reading";return r`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${t?u:r`<nav class="rail-lists" aria-label="Lists">
                ${Ru.map(e=>pf(e,cf[e],r`${cf[e]}`))}
              </nav>
              ${Ty()}`}
    </div>
    ${t?u:Ry()}
  </header>`}var xy={metric:r`g<span class="wide">, mm</span>`,both:r`both`,us:r`oz<span class="wide">, in</span>`};function Ty(){let t=e=>()=>{f({units:e}),localStorage.setItem("units",e)};return r`<div class="tools units" role="group" aria-label="Units">
    ${["metric","both","us"].map(e=>r`<button type="button" aria-pressed=${l.units===e?"true":"false"} @click=${t(e)}>
          ${xy[e]}
        </button>`)}
  </div>`}function Ry(){let{undo:t,redo:e}=tr();return r`<div class="bar">
    ${l.run.file?Sy():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!t} @click=${t}>${Rl(vy)}<span>Undo</span></button>
      <button type="button" ?disabled=${!e} @click=${e}>${Rl(ky)}<span>Redo</span></button>
    </div>
    ${l.run.file?My():u}
  </div>`}function Sy(){return r`<nav aria-label="Views of this run">
    <p class="rail-name">${String(l.run.now.name??l.run.file)}</p>
    <div class="rail-views">${Su.map(Ay)}</div>
  </nav>`}function Ay(t){let[e,n]=yy[t],o=Py(t);return pf(t,o?`${e}, ${o.words}`:e,r`${Rl(n)}<span>${e}</span>${o?r`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function Py(t){if(t==="watch"&&rp())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(t==="set-up"&&Dy())return{sign:"\u25CB",words:"missing"}}var Dy=()=>l.complaint!==void 0&&!l.complaint.is_fault;function pf(t,e,n){let o=l.view===t;return r`<button
    type="button"
    aria-label=${e}
    aria-current=${o?"page":u}
    @click=${()=>{mo(t)}}
  >
    ${n}
  </button>`}function My(){let{words:t,is_kept:e,is_failed:n}=sf();return r`<p class="saving ${n?"failed":e?"kept":""}" role="status">${t}</p>`}var Oy=300,Fy=1e3;function mf(){let{quoted:t,plan:e,quote_wish:n,is_old:o}=l,i=t?.of===e&&t?.wish===n;!i&&!o&&Cy();let s=i?t?.complaint:void 0;return{quote:t?.quote,complaint:s,is_old:o||!i||s!==void 0}}function Al(){l.quoted&&f({quoted:{...l.quoted,of:void 0}})}var yi,Sl=!1;function Cy(){let{plan:t,quote_wish:e}=l;Sl||yi?.of===t&&yi?.wish===e||(window.clearTimeout(yi?.timer),yi={of:t,wish:e,timer:window.setTimeout(()=>{Ey()},l.quoted?Oy:0)})}var Ly=t=>t.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function By(t,{numbers:e="",by:n,figure:o}){let i=Ly(e);return{...t,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}async function Ey(){yi=void 0;let{run:t,plan:e,planned:n,quote_wish:o,is_old:i}=l;if(!(!e||!n||i)){Sl=!0;try{let s=await $u(By(n,o));t===l.run&&f({quoted:{of:e,wish:o,quote:s}})}catch(s){if(!(s instanceof v))throw s;if(t!==l.run)return;f({quoted:{of:e,wish:o,quote:l.quoted?.quote,complaint:s.complaint}}),s.may_pass&&window.setTimeout(Al,Fy)}finally{Sl=!1}}}var Rn={run:"/money/currency",studio:"/currency"},Pl={run:"/money/prices",studio:"/prices"},Dl=()=>xn(Rn)!==void 0;function gf(){let[t,e]=[_("run",Rn.run),_("studio",Rn.studio)];return t!==void 0&&e!==void 0&&t!==e?[]:[Rn,Pl]}var ff=()=>l.plan?.piece.cost?.materials.map(t=>t.name)??[],hf=t=>l.fats.find(e=>e.id===t)?.name??t;function _f(){if(!Dl())return r`<button type="button" @click=${Wy}>Add what you paid</button>`;let t=(e,n)=>{let o=`/${Dt(e)}/${n}`;return{run:Pl.run+o,studio:Pl.studio+o}};return r`<div class="row">
      ${At(Rn,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${ff().map(e=>r`<div class="row">
            ${At(t(e,"paid"),{label:`${hf(e)}, paid`,optional:!0,takes_part:!0,short:!0})}
            ${At(t(e,"for"),{label:`for how much ${hf(e)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
          </div>`)}
    </div>
    ${ff().length?u:r`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function Wy(){let t=St()?"studio":"run",e=t==="studio"?Rn.studio:Rn.run;L(t,"Prices added",e,"",mt(t,e))}function wf(t,e){let{numbers:n,currency:o,has_tax:i}=t,s=(a,c,d="")=>r`<tr class=${d}>
      <th scope="row">${a}</th>
      ${n.map(p=>r`<td><b>${c(p)}</b></td>`)}
    </tr>`;return r`<p class="aside">Money in ${o}${i?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${e?"old":""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${n.map(a=>r`<th scope="col"><b>${a.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${s("to make",a=>a.make)} ${s("fillings",a=>a.fillings)}
          ${s("batches",a=>a.batches)}
          ${n.some(a=>a.to_stock)?s("beyond those, at no cost",a=>a.to_stock):u}
        </tbody>
        <tbody>
          ${bf("A piece costs",n)} ${Iy(t).map(a=>jy(t,a,s))}
          ${s("Cost of a piece",a=>a.cost_each,"sum-of")} ${s("The whole run",a=>a.cost)}
        </tbody>
        ${yf(t).map((a,c)=>Uy(t,a,c===0,s))}
      </table>
    </div>`}var bf=(t,e)=>r`<tr class="group">
    <th scope="rowgroup" colspan=${e.length+1}>${t}</th>
  </tr>`,Iy=({numbers:t})=>[...new Set(t.flatMap(({parts:e})=>e.map(({part:n})=>n)))];function Hy({parts:t,items:e},n){let o=t.find(i=>i.part===n);return o?e.some(i=>i.part===n&&i.cost!==null)?o.each:"unpriced":"\u2013"}function jy(t,e,n){let o=`quote ${e}`,i=l.open.has(o),s=`quote-${e.replaceAll(/\W/g,"-")}`,a=r`<button
    type="button"
    class="line"
    aria-expanded=${i?"true":"false"}
    aria-controls=${i?s:u}
    @click=${()=>zt("open",o)}
  >
    ${e}<span class="how" aria-hidden="true">${i?"\u2013":"="}</span>
  </button>`;return r`${n(a,c=>Hy(c,e))}
  ${i?r`<tr class="opened">
          <td colspan=${t.numbers.length+1} id=${s}>${t.numbers.map(c=>Ny(c,e))}</td>
        </tr>`:u}`}function Ny({sell:t,items:e},n){return r`<div class="sum">
    <table>
      <caption>
        ${n} of the whole run, ${t} to sell
      </caption>
      <tbody>
        ${e.filter(o=>o.part===n).map(({name:o,amount:i,cost:s,how:a})=>r`<tr>
                <th scope="row">${o}</th>
                <td>${s??"unpriced"}</td>
                <td>${a||i}</td>
              </tr>`)}
      </tbody>
    </table>
  </div>`}function yf({numbers:t}){let e=t.flatMap(({prices:n})=>n);return e.filter((n,o)=>e.findIndex(({way:i})=>i===n.way)===o)}var $f=t=>`${k(t,1)} %`;function qy(t){return"margin_percent"in t?`margin ${k(t.margin_percent,2)} %`:"markup_percent"in t?`markup ${k(t.markup_percent,2)} %`:"price as set"}function Uy({numbers:t,has_tax:e},{way:n,by:o,ask:i,with_tax:s},a,c){let d=i===s,p=g=>w=>{let b=w.prices.find(T=>T.way===n);return b?g(b):"\u2013"},m=(g,w)=>a?r`${w} ${ze(g)}`:w;return r`<tbody>
    ${bf(r`<span class="way">${n}</span>, ${qy(o)}`,t)}
    ${c(e?d?"Ask, with tax":"Ask, without tax":"Ask",p(zy),"ask")}
    ${e?c("tax in it",p(({tax:g})=>d?g:"none")):u}
    ${c("fees",p(({fees:g})=>g))}
    ${c("left for you",p(({profit:g})=>g))}
    ${c(m("margin","margin, of the price"),p(g=>$f(g.margin_percent)))}
    ${c(m("markup","markup, on the cost"),p(g=>$f(g.markup_percent)))}
  </tbody>`}var zy=({ask:t,is_below_cost:e})=>e?r`<span class="below">${t}<small>below cost</small></span>`:t;function vf(t){let e=n=>t.numbers.filter(({prices:o})=>o.some(i=>i.way===n&&i.is_below_cost));return yf(t).map(({way:n})=>({way:n,sold:e(n).map(({sell:o})=>o)})).filter(({sold:n})=>n.length).map(({way:n,sold:o})=>r`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${n}: each piece sold loses money, at
          ${o.join(", ")} to sell.
        </p>`)}function kf(){return r`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${Dl()?Ky():Jy()}
  </section>`}var Jy=()=>r`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>Vy()}>To the prices paid</button>`;function Vy(t="lane-studio"){st("set-up studio"),mo("set-up"),requestAnimationFrame(()=>nt(I(t)))}function Ky(){let{quote:t,complaint:e,is_old:n}=mf();return r`${t?r`${Qy(t)} ${vf(t)}`:u}
    <div class="row">${Zy(e)}</div>
    ${Xy()?u:nv(e)} ${e?Yy(e):u}
    ${t?ov(t,n):e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}function Qy({numbers:t}){let e=[...new Set(t.flatMap(o=>o.dangers))];if(!e.length)return u;let n=o=>t.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return r`<div class="dangers">
    ${e.map(o=>r`<p class="danger"><strong>${Te}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var Gy=["sell","margin","markup","price"],Ml=(t,e)=>t?.file===""&&t.field===e?U(t):void 0;function Yy(t){return Gy.some(e=>Ml(t,e))?u:r`<p class="alarm" role="status">${bi(t.field)}${U(t)}</p>
    ${t.is_fault?r`<button type="button" @click=${Al}>Ask again</button>`:t.field.startsWith("/")?r`<button type="button" @click=${_l}>Go to the field</button>`:u}`}function xf({id:t,label:e,unit:n,value:o,hint:i,complaint:s,take:a,left:c}){return r`<div class="field ${s?"wants":""}">
    <label for=${t} data-said=${n??u}>${e}</label>
    <input
      id=${t}
      .value=${W(o)}
      @input=${d=>a(d.target.value)}
      @blur=${()=>c?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${s?"true":"false"}
      aria-describedby=${s||i?`${t}-said`:u}
    />
    ${Tt(t,s,i)}
  </div>`}function Zy(t){let{numbers:e}=l.quote_wish;return xf({id:"quote-numbers",label:"Numbers of pieces",value:e??String(l.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:Ml(t,"sell"),take:n=>Bo({numbers:n}),left:()=>{e!==void 0&&!e.trim()&&Bo({numbers:void 0})}})}var Xy=()=>Object.keys(_("studio","/asking")??{}).length>0,tv=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],ev={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function nv(t){let{by:e,figure:n}=l.quote_wish,{label:o,unit:i}=ev[e??"price"],s=a=>i&&Je(a)?`${a.trim()} ${i}`:a;return r`${ot("A price, for this moment",e,tv,a=>{Bo({by:a,figure:""}),nt(I("quote-figure"))})}
    ${e?r`<div class="row">
            ${xf({id:"quote-figure",label:o,unit:i||l.quoted?.quote?.currency,value:i?n.replace(/ %$/,""):n,complaint:Ml(t,e),take:a=>Bo({figure:s(a)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>`}function ov(t,e){let n=[...new Set(t.numbers.flatMap(o=>o.unpriced))];return r`${n.length?r`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${wf(t,e)} ${iv(t,e)}`}function iv({numbers:t,steps:e,gaps:n,currency:o},i){let s=a=>a===null?"":`, ${a} ${o} more`;return r`<div class="worth-making ${i?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${t.flatMap(({around:a})=>a.map(({text:c})=>r`<li><b>${c}</b></li>`))}
      ${n.map(({from:a,to:c,why:d})=>r`<li><b>${a===c?a:`${a} to ${c}`} cannot be made: ${d}.</b></li>`)}
    </ul>
    ${e.length?r`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${e.map(a=>r`<li><b>${a.sell}: ${a.begins}${s(a.more)}</b></li>`)}
            </ul>
          </details>`:u}
  </div>`}function Rf(t){if(!up(t))return u;let{whole:e}=t,{batches:n}=e.pieces,o=bt(e)?`${at(n,"batch","batches")} together`:"all whippings together";return r`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${Tf(t,"pour","The base, whole run")}
      ${e.pipe?Tf(t,"pipe","The topping, whole run"):u} ${sv(t)}
    </div>
  </section>`}function Tf(t,e,n){let{whole:o}=t,i=e==="pour"?o.pour:o.pipe,s=[...bp(i),...ws(i)];return r`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:a,i:c})=>er(`${e}.ingredients.${c}.g`,a.name,wn(l.units,a)))}
    ${er(`${e}.make_g`,e==="pour"?"Base in all":"Topping in all",O(l.units,i.make_g))}
  </div>`}var er=(t,e,n)=>A({key:`needs.${t}`,label:e,shown:n,of:t});function sv(t){let{whole:e}=t,n=(e.pour.layers??[]).flatMap((s,a)=>s.colours.map((c,d)=>({layer:s,one:c,i:a,j:d}))),o=e.dust??[];if(!n.length&&!o.length)return u;let i=s=>et(l.units,yt(s,""));return r`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:a,i:c,j:d})=>er(`pour.layers.${c}.colours.${d}.g`,`${a.name}, for ${s.name}`,wn(l.units,a)))}
    ${o.map((s,a)=>er(`dust.${a}.g`,s.name,i(s)))}
  </div>`}function Sf(t){let{cost:e,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:a}=t.piece,c=s?"A bar on average, ":"",d=p=>c?c+p.toLowerCase():p;return r`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${A({key:"piece.fresh",label:d("Fresh"),shown:O(l.units,n),of:"piece.fresh_g"})}
      ${o===null?u:A({key:"piece.cured",label:d("Cured"),shown:O(l.units,o),of:"piece.cured_g"})}
      ${s?A({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:O(l.units,s.cured_g??s.fresh_g),of:s.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:A({key:"piece.label",label:"Net weight for the label",shown:O(l.units,i,0),of:"piece.label_g"})}
      ${a?A({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[a.width_mm,a.depth_mm,a.height_mm].map(p=>k(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${e&&e.amount!==null?r`${A({key:"piece.cost",label:"Material cost of one piece",shown:[`${e.amount} ${e.currency}`,""],size:"weigh",note:`${e.total} ${e.currency} for the run`,of:"piece.cost.amount"})}
            ${e.unpriced.length?r`<p class="alarm">Unpriced, and not in this figure: ${e.unpriced.join(", ")}.</p>`:u}`:r`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${Ol(t)}
    </section>
    ${kf()} ${Rf(Yn(t))}`}function Ol(t){let e=t.label;if(!e)return u;let n=(e.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?r`<h3>${i}</h3>
          <p>${s}</p>`:u;return r`<details>
    <summary>Label draft, ${e.market}</summary>
    ${o("Net quantity",e.net_quantity?`${e.net_quantity.statement}: ${e.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",e.as_saponified?.text)}
    ${o("Ingredients, as charged",e.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(e.remarks??[]).map(i=>r`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[Pf,Cl]=[440,270],[vi,Fl,nr,_o]=[64,Pf-10,10,Cl-52],rv=6,av=8;function Af(t){let e=t/rv,n=10**Math.floor(Math.log10(e)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=e);return Array.from({length:Math.floor(t/o+1e-9)+1},(i,s)=>s*o)}var $o=t=>k(t,1);function Df(t,e){let n=t.at(-1)?.depth_mm??1,o=t.at(-1)?.volume_ml??1,i=c=>$o(vi+(Fl-vi)*c/n),s=c=>$o(_o-(_o-nr)*c/o),a=t.map(({depth_mm:c,volume_ml:d})=>`L${i(c)} ${s(d)}`).join("");return r`<svg
      class="level-curve"
      viewBox="0 0 ${Pf} ${Cl}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${e} millimetres"
    >
      ${Af(n).map(c=>M`<path class="grid" d="M${i(c)} ${nr}V${_o}" />
            <text x=${i(c)} y=${_o+20} text-anchor="middle">${$o(c)}</text>`)}
      ${Af(o).map(c=>M`<path class="grid" d="M${vi} ${s(c)}H${Fl}" />
            <text x=${vi-8} y=${s(c)} text-anchor="end" dominant-baseline="middle">${$o(c)}</text>`)}
      ${M`<text x=${(vi+Fl)/2} y=${Cl-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(nr+_o)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${s(0)}${a}" />
        <path class="pour-line" d="M${i(e)} ${nr}V${_o}" />`}
    </svg>
    ${lv(t)}`}function lv(t){let e=Math.max(1,Math.round(t.length/av)),n=t.filter((o,i)=>(i+1)%e===0);return r`<details>
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
              <th scope="row">${$o(o)}</th>
              <td>${$o(i)}</td>
              <td>${k(s,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var or=Math.PI/8,uv=500,Ll=class extends HTMLElement{#n=[];#t=0;#e;#i=!1;#o=!1;#s="";#r=!1;#a="";#l="Drawing ...";#c=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([e])=>this.#$(e.isIntersecting),{rootMargin:"400px"});set views(e){this.#n=e,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#c),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#a="",URL.revokeObjectURL(this.#s)}#$(e){this.#m=e,e&&requestIdleCallback(()=>{this.#w()},{timeout:1500})}async#w(){if(this.#e||this.#o)return this.#g();let e=this.querySelector("canvas");if(!(!this.isConnected||!e||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(e),this.#f.observe(e)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let e=this.#e||this.#o;!this.#m||!e||this.#d()===this.#a||(window.clearTimeout(this.#c),this.#c=window.setTimeout(()=>{this.#p()},uv))}#d(){let{of:e}=this.#n[this.#t],n=this.#o?"plan"in e?"piece":"picture":"glb",[o,i]=Object.entries(e)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let e=this.#d();if(e!==this.#a){try{let n=await Ce(JSON.parse(e));if(e!==this.#d()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#s),this.#s=URL.createObjectURL(n)):this.#e?.show(Vn(await n.arrayBuffer())),this.#a=e,this.#l=""}catch(n){if(!(n instanceof v))throw n;this.#l=n.message}this.#u()}}#_(e){e(),this.#l="Drawing ...",this.#u(),this.#p()}#u(){let e=r`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>r`<button
            type="button"
            aria-pressed=${i===this.#t?"true":"false"}
            @click=${()=>this.#_(()=>this.#t=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=r`<p class="aside" role="status">${this.#l}</p>`;ce(r`${e} ${this.#o?this.#y():this.#b()} ${n}`,this)}#b(){let e=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return r`<canvas
        role="img"
        aria-label="${this.#n[this.#t]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${e(-or)}>Turn left</button>
        <button type="button" @click=${e(or)}>Turn right</button>
        <button type="button" @click=${n(or)}>From above</button>
        <button type="button" @click=${n(-or)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return r`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#s?r`<img
              src=${this.#s}
              alt="${this.#n[this.#t].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",Ll);function Mf(t){let{measured:e}=l;if(!e)return r`<p role="status">${l.measuring_failed??"Measuring the mould ..."}</p>`;let n=e.gauge.pockets[0],o=e.gauge.notes;return r`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${t.pour.mould}</small></h2>
    ${A({key:"mould.brimful",label:"To the brim",note:`${R(pt(l.units,n.brim_mm-n.floor_mm))} deep, ${e.gauge.pockets.length} ${e.gauge.pockets.length===1?"cavity":"cavities"}`,shown:_t(l.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:e.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${Df(n.levels,t.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${cv(t,e.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?r`<ul class="limits">
            ${o.map(i=>r`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function cv(t,e){let n={words:"The mould, filled",of:{gauge:{file:e,"below-brim":`${t.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:l.run.file,run:l.run.now}}};return t.pipe||t.decorations?.length||t.pour.layers?.length?[o,n]:[n,o]}var wo=t=>y(l.printing,t);function Of(t,e){let n=document.createElement("a");n.href=t,e(n),n.click()}async function Ff(t){if(!l.printing.is_working){wo({is_working:!0,told:"Making it ..."});try{await dv(),wo({told:await t()})}catch(e){wo({told:e instanceof Error?e.message:String(e)})}wo({is_working:!1})}}async function dv(){await jn();let t=xe("run");if(t)throw new Error(`${t.file} was changed outside this page: choose first which version to keep.`)}var Xe=(t,e)=>()=>Ff(async()=>{let n=URL.createObjectURL(await Ce(e));return Of(n,o=>o.download=t),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${t} is in your downloads.`}),pv=t=>()=>Ff(async()=>(Of(await ku(t),e=>Object.assign(e,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),mv=t=>{wo({paper:t}),localStorage.setItem("paper",t)},fv=t=>t.batches.flatMap(e=>e.numbers.map(n=>({number:n,one:e}))).sort((e,n)=>e.number-n.number);function Cf(t){let{batch:e}=l.printing;return bt(t)&&e<=t.pieces.batches?e:0}function hv(t){if(!bt(t))return u;let e=Cf(t),n=i=>wo({batch:Number(i.target.value)}),o=(i,s)=>r`<option value=${i} .selected=${W(i===e)}>${s}</option>`;return r`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${fv(t).map(({number:i,one:s})=>o(i,`batch ${i} of ${t.pieces.batches}: ${he(t,s)}`))}
      </select>
    </div>
  </div>`}function Lf(t){let{paper:e,is_working:n,told:o}=l.printing,i=l.run.file.split("/").at(-1).replace(/(\.run)?\.json$/,""),s={file:l.run.file,run:l.run.now},a=l.measured?.mould,c={file:a,"below-brim":`${t.pour.below_brim_mm} mm`},d=Cf(t),p={plan:s,paper:e,...d?{batch:String(d)}:{}},m=(g,w,b="")=>r`<button type="button" class=${b} ?disabled=${n} @click=${()=>{w()}}>${g}</button>`;return r`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${ot("Paper",e,[["A4","A4"],["Letter","Letter"]],mv)}
    ${hv(t)}
    <div class="choice">
      ${m("Bench sheet, to print",pv({kind:"sheet",...p}),"strong")}
      ${l.files?.makes_pdf?m("Bench sheet, PDF",Xe(`${i}${d?` batch ${d}`:""}.pdf`,{kind:"sheet-pdf",...p})):""}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${t.label?m("Label draft",Xe(`${i} label.txt`,{kind:"label",plan:s})):""}
      ${m("Drawing of the pour, true size",Xe(`${i} pour.svg`,{kind:"picture",plan:s}))}
      ${m("Drawing of the piece",Xe(`${i}.svg`,{kind:"piece",plan:s}))}
      ${m("Whole piece, GLB (3D viewer)",Xe(`${i}.glb`,{kind:"glb",plan:s}))}
      ${m("Whole piece, STL (3D printing)",Xe(`${i}.stl`,{kind:"stl",plan:s}))}
      ${a?r`${m("Filled cavity, GLB (3D viewer)",Xe(`${i} cavity.glb`,{kind:"glb",gauge:c}))}
            ${m("Cavity, STL (3D printing)",Xe(`${i} cavity.stl`,{kind:"stl",gauge:{file:a}}))}`:""}
    </div>
    <p role="status">
      ${o||`The drawing has the pour line ${R(pt(l.units,t.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var Bf=t=>Lf(t);var ft={at:"/decorations"},bo=t=>`${ft.at}/${t}`,tn=t=>F("run",`${bo(t)}/name`).trim()||`Decoration ${t+1}`,Yt=()=>$(l.run.now,"/cut")!==void 0,ir=t=>["mould","rod","drizzle"].find(e=>_("run",`${t}/${e}`)!==void 0),ki=t=>["per_piece","per_cast"].find(e=>_("run",`${t}/${e}`)!==void 0);var Ut="/batch",Ef=t=>`${t}/moulds_owned`;function Bl(){return P({name:"batches",pointers:[Ut],summary:`Batches${gv()}`,body:()=>r` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${H("run",Ut)}
        <div class="row">${_v()} ${wv()}</div>
        ${x({question:"Cavities at each filling",at:Ut,asked_at:`${Ut}/fill`,chosen:_("run",`${Ut}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>Wf("fill",t==="full"?t:void 0)})}`})}function gv(){let[t,e]=[`${Ut}/pieces`,`${Ut}/casts`].map(o=>F("run",o)),n=[t&&`at most ${t} in a batch`,e&&`at most ${e} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function Wf(t,e){let n=X("run",Ut,[t]),o=e===void 0?n:{...n,[t]:e};return Object.keys(o).length?o:void 0}function _v(){let t=_("run",`${Ut}/casts`)!==void 0,e=(n,o)=>h({label:o,at:`${Ut}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return Yt()?_("run",`${Ut}/pieces`)!==void 0?r`${e("pieces","Most bars in a batch")}
        <button type="button" @click=${$v}>Count loaves instead</button>`:e("casts","Most loaves in a batch"):t?e("casts","Most casts in a batch"):e("pieces","Most pieces in a batch")}function $v(){L("run","Counted in loaves",Ut,Wf("pieces",void 0))}function wv(){let t=`${Ut}/whippings`;return!jt()&&_("run",t)===void 0?u:h({label:"Whippings a batch",at:t,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var bv=500,yv=()=>$(l.run.now,"/cut")===void 0&&vv()>=bv,vv=()=>l.plan?.pour.brimful_ml??l.measured?.gauge.pockets[0]?.brimful_ml??0;function If(t){st("set-up cut"),L("run","Cut","/cut",{bar:El[t],kerf:""},mt("run",`/cut/bar/${Object.keys(El[t])[0]}`))}function kv(){L("run","Left whole","/cut",void 0,I("cut-into-bars"))}function Hf(){return yv()?r`<button type="button" id="cut-into-bars" @click=${()=>If("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>If("slab")}>Cut it into bars</button>`:u}var El={loaf:{thickness:""},slab:{length:"",width:""}};function xv(){let t=_("run","/cut/bar")??{};return"thickness"in t?"loaf":"length"in t||"width"in t?"slab":void 0}var Tv={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function jf(){let t=xv(),e=(o,i)=>h({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=F("run","/cut/along");return r` ${x({question:"What is cut?",at:"/cut/bar",chosen:t,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>El[o]})}
    <div class="row">
      ${t==="loaf"?h({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${t==="slab"?["length","width"].map(o=>h({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${h({label:"Kerf of each cut",at:"/cut/kerf",unit:"mm",short:!0,term:"kerf"})}
      ${e("Off each end","end_trim")} ${e("Off each side","side_trim")}
      ${e("Planed off the top","top_planing")}
      ${e(t==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm.</p>
    ${t?x({question:t==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:Tv[t],puts:o=>o||void 0}):u}
    <button type="button" @click=${kv}>Leave it whole</button>`}var Rv={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Zt={at:"/dust"},sr=t=>F("run",`/dust/${t}/name`).trim()||`Dust ${t+1}`;function Nf(){st("set-up dust"),K(Zt,{name:""},"Dust")}function Sv(t){return _("run",`${t}/per_piece`)!==void 0?"piece":_("run",`${t}/on_covered_surface`)===void 0?void 0:"surface"}function qf(t){let e=`/dust/${t}`,n=Sv(e),o=sr(t),i=s=>({...X("run",e,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...Rv[s]});return r` ${h({label:"Which powder",at:`${e}/name`})}
  ${x({question:"How much of it?",at:e,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?h({label:`${o}, for one piece`,at:`${e}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?r`<div class="row">
            ${h({label:"Powder on the covered surface",at:`${e}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${h({label:"Share of the surface covered",at:`${e}/coverage`,unit:"%",short:!0})}
            ${h({label:"Share of the powder that sticks",at:`${e}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${Ge("run",e,o)}`}var Av={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function Pv(t){return["on_top","buried"].find(e=>_("run",`${t}/${e}`)!==void 0)??"by number"}function Uf(t,e){let n=Pv(t),o=i=>({...X("run",t,["on_top","buried"]),...Av[i]});return ir(t)==="drizzle"?r`<p class="aside">A drizzle lies on the surface it covers.</p>`:P({name:`${t} where`,pointers:[`${t}/on_top`,`${t}/buried`],summary:"Where it goes",body:()=>r` ${x({question:"Where does it go?",at:t,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?Dv(`${t}/on_top`):n==="buried"?Ov(t,e):r`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function Dv(t){return r`<div class="row">
      ${h({label:"Pressed into the top",at:`${t}/pressed_in`,unit:"mm"})}
      ${h({label:"Flat of the peak, across",at:`${t}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${zf(t,"It is turned")}`}function zf(t,e){let n=o=>h({label:`About ${o}`,at:`${t}/turn/${o}`,unit:"deg",optional:!0,short:!0});return P({name:`${t} turn`,pointers:[`${t}/turn`],summary:e,body:()=>r` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var Mv=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function Ov(t,e){let n=`${t}/buried`,o=e===S(ft).findIndex(a=>a.buried!==void 0),i=_("run",`${n}/places`)!==void 0?"said":_("run",`${n}/arrange`),s=_("run",`${n}/placed`);return r`${H("run",n)}
  ${h({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${x({question:"When is it set in?",at:`${n}/placed`,chosen:s,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:a=>a,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${x({question:"Where in the pour?",at:t,asked_at:`${n}/arrange`,chosen:i,answers:Mv,puts:a=>Cv(t,a)})}
  ${i==="said"?Bv(t,e):u}`}var Fv=()=>r`<svg
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
  </svg>`,Jf={x:"",y:"",height:""};function Cv(t,e){let n=X("run",`${t}/buried`,["arrange","places"]);if(e!=="said")return{..._("run",t),buried:{...n,arrange:e}};let o=Number(_("run",`${t}/${ki(t)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>Jf);return{...X("run",t,["per_piece","per_cast"]),[Vf(t)]:i.length,buried:{...n,places:i}}}var Vf=t=>Yt()?"per_cast":ki(t)??"per_piece";function Lv(t){let e=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,a)=>C(s,`${t}/${a}`,void 0),n);return C(i,`${t}/${Vf(t)}`,o)};return{at:`${t}/buried/places`,least:1,and:e}}function Bv(t,e){let n=Lv(t),o=S(n);return r`${Fv()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,s)=>{let a=`${n.at}/${s}`,c=d=>h({label:`Place ${s+1}: ${d}`,at:`${a}/${d}`,unit:"mm",short:!0});return r`<div class="part" id=${q(n,s)} role="group" aria-label="Place ${s+1} of ${tn(e)}">
        ${H("run",a)}
        <div class="row">
          ${c("x")} ${c("y")} ${c("height")} ${Z(n,s,`place ${s+1} of ${tn(e)}`)}
        </div>
        ${zf(a,`Place ${s+1} is turned`)}
      </div>`})}
    ${Q(n,"Add a place",()=>K(n,Jf,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var Kf=t=>`${t} made`;function Ev(){let t=bo(S(ft).length),e=Yt()?{}:{per_piece:""};st("set-up decorate");for(let n of[Kf(t),`${t} where`])ao("run",n);K(ft,{name:"",material:"",...e,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function Qf(){let[t,e]=[S(ft).length>0,S(Zt).length>0];return r`${Q(ft,t?"Add another decoration":"Add a decoration",Ev)}
  ${Q(Zt,e?"Add another dust":"Add a dust",Nf)}`}function Gf(t){let e=bo(t);return r` ${H("run",e)} ${jv(e)}
    <div class="row">
      ${Wv(e)} ${h({label:"Spares",at:`${e}/spares`,unit:"%",short:!0})}
      ${h({label:"Lost in melting",at:`${e}/melt_loss`,unit:"%",short:!0})}
      ${h({label:"Left in the jug per tray fill",at:`${e}/left_in_jug`,unit:"g",short:!0})}
      ${h({label:"Density when set",at:`${e}/density`,unit:"g/ml",short:!0})}
    </div>
    ${Uf(e,t)} ${Ge("run",e,tn(t))}`}function Wv(t){let e=ki(t),n=gt("run",`${t}/buried/places`).length;if(n&&n===_("run",`${t}/${e}`)&&!(Yt()&&e==="per_piece"))return r``;let o=e==="per_cast"?Yt()?"In each loaf":"In each cast":Yt()?"On each bar":"On each piece",i=s=>({...X("run",t,["per_piece","per_cast"]),[s]:e?_("run",`${t}/${e}`):""});return r`${Yt()?x({question:"Counted by",at:t,is_told_elsewhere:!0,chosen:e,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${e?h({label:o,at:`${t}/${e}`,count:!0,short:!0}):u}`}var Iv={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}}};function Hv(t,e){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle",...e==="drizzle"?["on_top","buried"]:[]];return{...X("run",t,n),...Iv[e]}}function jv(t){let e=ir(t),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","time_per_tray_fill"].map(o=>`${t}/${o}`);return P({name:Kf(t),pointers:n,summary:"What it is and how it is made",is_needed:!e,body:()=>r` <div class="row">
          ${h({label:"What it is called",at:`${t}/name`})}
          ${h({label:"What is melted for it",at:`${t}/material`})}
        </div>
        <p class="hint">The price goes by what is melted.</p>
        ${x({question:"How is it made?",at:t,is_told_elsewhere:!0,chosen:e,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"]],puts:o=>Hv(t,o)})}
        ${e?Nv[e](t):u}
        ${h({label:"To fill all trays once, setting included",at:`${t}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var Nv={mould:qv,rod:t=>r`<div class="row">
      ${h({label:"Rod, diameter",at:`${t}/rod/diameter`,unit:"mm",short:!0})}
      ${h({label:"Rod, length",at:`${t}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:t=>r`<div class="row">
      ${h({label:"Area covered",at:`${t}/drizzle/area`,unit:"cm2",short:!0})}
      ${h({label:"Thickness",at:`${t}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`};function qv(t){let e=_("run",`${t}/fill/depth`)===void 0?"below_brim":"depth";return r`${ro("Cast in",`${t}/mould`,l.files?.moulds)}
  ${x({question:"Filled to a line",at:`${t}/fill`,chosen:e,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${e==="below_brim"?h({label:"Filled to, below the brim",at:`${t}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):h({label:"Filled to, above the floor",at:`${t}/fill/depth`,unit:"mm"})}
  ${x({question:"What makes one?",at:`${t}/cast_as`,chosen:_("run",`${t}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}function Yf(){let t="/lye_pot",e=_("run",t)!==void 0;return!e&&!jt()?u:r`<div class="labelled">
      ${Sa(t,"Make one pot of lye solution for both",e,{})}${Re("lye_solution")}
    </div>
    ${re("lye_solution")}
    ${e?h({label:"The empty pot weighs",at:`${t}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function Zf(t){let e={at:"/bottles"},n=S(e);return P({name:"bottles",pointers:[e.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>r` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${t&&tt(t)?` Weights are of ${tt(t)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${e.at}/${i}`,a=String(o.name)||`bottle ${i+1}`;return r`<div class="part" id=${q(e,i)} role="group" aria-label=${a}>
            <div class="part-head">
              <p class="part-title">${a}</p>
              ${Z(e,i,a)}
            </div>
            ${H("run",s)}
            <div class="row">
              ${h({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${h({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${t?Uv(t,i,a):u}
          </div>`})}
        ${Q(e,"Use up a bottle",()=>K(e,{name:"",holds:""},"bottle"))}`})}function Uv(t,e,n){let o=t.bottles?.[e];return o?.name!==n?u:o.parts.map((i,s)=>A({key:`bottle.${e}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${k(i.percent_of_batter,2)} % of the batter`,shown:et(l.units,yt(i,"")),size:"weigh",of:`${t.place}.bottles.${e}.parts.${s}.g`}))}var xi="/label",Il=()=>_("run",xi)!==void 0;function Xf(){let e=_("studio",yo.studio)!==void 0?{weight_spread:""}:{market:""};st("set-up label"),L("run","Label added",xi,e,I("lane-label"))}function th(){return r`${H("run",xi)} ${zv()}
    <button type="button" @click=${()=>L("run","Label removed",xi,void 0)}>Remove the label</button>`}var yo={run:"/label/market",studio:"/label/market"};function Hl(){let{of:t,at:e}=di(yo);return r`${x({of:t,question:"Where it is sold",at:t==="run"?xi:e,asked_at:e,chosen:_(t,e)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>t==="run"?Jv(n):n})}
  ${lo("Where it is sold",[yo])}`}function zv(){let t=_("run","/label/weighed_pieces")===void 0?"said":"weighed";return r`${Hl()}
  ${x({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:Vv})}
  ${t==="weighed"?Kv():r`<div class="row">
          ${h({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${h({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${h({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${xn(yo)==="EU"||_("run",Wl)!==void 0?Sa(Wl,"With the e mark",_("run",Wl)===!0,!0):u}`}var Wl="/label/e_mark";function Jv(t){return{...X("run","/label",t==="EU"?[]:["e_mark"]),market:t}}function Vv(t){let e=X("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return t==="weighed"?{...e,weighed_pieces:["","",""]}:e}function Kv(){let t={at:"/label/weighed_pieces",least:3};return r`<div class="trials">
      ${S(t).map((e,n)=>r`<div class="row" id=${q(t,n)}>
            ${h({label:`Piece ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${Z(t,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${Q(t,"One more piece",()=>K(t,"","piece"))}`}function eh(t){let{batches:e,fillings:n,cavities:o,to_stock:i}=t.pieces,s=t.batches.map(d=>`${$a(t)?`${d.count} of `:""}${he(t,d)}`),a=`Made in ${e} batches${$a(t)?": ":" of "}${ni(s)}; ${hs(n,o)}.`,c=t.batch_limits.filter(d=>d.sets);return r`<div class="batches-told of-plan">
    ${bt(t)?r`<p><b>${a}</b></p>`:u}
    ${i>0?r`<p>
            ${at(i,t.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${c.length?r`<p><span class="called">What sets a batch:</span> ${c.map(d=>d.text).join(" ")}</p>`:u}
    ${t.around.length?r`<p><span class="called">One fewer, one more:</span> ${t.around.map(d=>d.text).join(" ")}</p>`:u}
  </div>`}var nh=t=>t.map(e=>`M${e.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function oh(t,e){let n=e.brim-e.floor,o=t.pour.poured_to_mm??t.pour.depth_mm,i=t.decorations?.find(d=>!d.buried&&d.cavity_fills>0),s=i?ah(i):0,a=i?i.on_top?.stands_proud_mm??1.9*s:0,c=t.pipe?Qv(t,e,n,a):0;return{brim:n,line:o,topping:c,ball:s,proud:a,top:Math.max(n,(t.pipe?n:o)+c+a)}}function Qv(t,e,n,o){let i=Zn($(l.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(t.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[a,c]=sa(e,e.brim-.01),d=Math.PI/4*(c-a)**2;return 1500*t.pipe.visible_each_ml/d}function jl(t,e){let[n,o]=sa(t,t.brim-.01),i=(n+o)/2,s=3,a=m=>(o-n)/2*Math.sqrt(1-(m/(s+.3))**2),c=m=>-(e.brim+e.topping*m/s),d=(m,g,w)=>{let b=i+w*(Math.max(a(m),a(g))+(o-n)*.035);return`C${b} ${c(m)} ${b} ${c(g)} ${i+w*a(g)*(g?.94:1)} ${c(g)}`},p=`M${n} ${c(0)}`;for(let m=0;m<s;++m)p+=d(m,m+1,-1);p+=`L${i+a(s)*.94} ${c(s)}`;for(let m=s;m>0;--m)p+=d(m,m-1,1);return`${p}Z`}var Ti=(t,e)=>t===e?`shaded ${e}`:"plain";function en(t,e,n=u){return r`${ih(t,e,n)}
  ${t==="decorate"&&Nl(e)?r`<p class="hint">${Nl(e)}</p>`:u}`}var nn=(t,e)=>r`<div class="small-view">${ih(t,e,u)}</div>`;function ih(t,e,n){let o=l.measured?.outline;if(!o)return r`<p class="drawing hint">${l.measuring_failed??"Reading the mould ..."}</p>`;let i=oh(e,o),s=o.right-o.left,a=Math.max(6,s*.1),c={x:o.left-a,y:-i.top-a,w:s+2*a,h:i.top+2*a};return r`<div class="drawing">
    <svg viewBox="${c.x} ${c.y} ${c.w} ${c.h}" role="img" aria-label=${sk(t,e)}>
      ${Gv(t)} ${Yv(t,e,o,i)} ${Xv(t,e,o,i)} ${tk()}
      ${ek(t,e,o,i)} ${ik(t,e,o,i)}
      ${M`<line class="pour-line" x1=${c.x+1} x2=${c.x+c.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${c.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${c.x+c.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function sh(t,e){let n=l.measured.outline,o=oh(t,n),i=n.right-n.left,s=Math.max(6,i*.1),a=o.top+2*s;return{share:(o.top+s-e)/a,per_mm:1/a,w:i+2*s,h:a}}function Gv(t){return M`<defs>
    <pattern id="hatch-${t}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${t}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${t}"><path clip-rule="evenodd" d=${nh(rh())} /></clipPath>
  </defs>`}function rh(){let t=l.measured.outline;return t.loops.map(e=>e.map(([n,o])=>[n,o-t.floor]))}function Yv(t,e,n,o){let i=t==="cut"?"pour":t,s=e.pour.layers??[],a=(s.length?s.map(c=>Zv(c,n)):[[o.line,o.line]]).map(([c,d])=>`M${n.left} 0V${-c}L${n.right} ${-d}V0Z`);return M`<g clip-path="url(#cavity-${t})">${a.map((c,d)=>M`<path class="whole" d=${c} /><path class="${Ti(i,"pour")} band${d%3}" d=${c} />${i==="pour"&&d%2===0?M`<path fill="url(#hatch-${t})" d=${c} />`:u}`).reverse()}</g>`}function Zv(t,e){let{surface:n,to_mm:o}=t;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*e.cut_y;return[i(e.left),i(e.right)]}function Xv(t,e,n,o){if(!e.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(l.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,a=(n.left+n.right)/2;return M`<g clip-path="url(#cavity-${t})"><rect class=${Ti(t,"pipe")} x=${a-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function tk(){return M`<path class="wall" fill-rule="evenodd" d=${nh(rh())} />`}function ek(t,e,n,o){let i=(n.left+n.right)/2,s=e.pipe?o.brim:o.line,a=e.decorations?.flatMap((c,d)=>(c.buried?.embeds??[]).map(p=>({embed:p,one:c,i:d})))??[];return M`
    ${e.pipe?M`<path class=${Ti(t,"pipe")} d=${jl(n,o)} />${t==="pipe"?M`<path fill="url(#dots-pipe)" d=${jl(n,o)} />`:u}`:u}
    ${t==="dust"?nk(e,n,o):u}
    ${o.ball?M`<circle class=${Ti(t,"decorate")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${a.map(({embed:c,one:d,i:p})=>ok(Ti(t,"decorate"),i,c,d,p))}`}function nk(t,e,n){let o=`M${e.left} ${-n.line}H${e.right}`;return M`<path class="powder" d=${t.pipe?jl(e,n):o} />`}function ok(t,e,n,o,i){let[s,a]=[e+n.middle_mm[0],n.middle_mm[2]],c=Zn($(l.run.now,`/decorations/${i}/rod/diameter`)),d=Zn($(l.run.now,`/decorations/${i}/rod/length`));if(!c||!d)return M`<circle class=${t} cx=${s} cy=${-a} r=${ah(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],g=Math.min(1,Math.hypot(p,m)),w=c/2*Math.sqrt(1-g*g),b=d*g+2*w,T=-180/Math.PI*Math.atan2(m,p);return M`<rect class=${t} x=${-b/2} y=${-c/2} width=${b} height=${c} rx=${w} ry=${w?c/2:0}
    transform="translate(${s} ${-a}) rotate(${T})" />`}var ah=t=>Math.cbrt(3e3*t.volume_each_ml/(4*Math.PI));function Nl(t){let e=(t.decorations??[]).filter((n,o)=>$(l.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return e.length?`Drawn as a ball of its volume, whatever its shape: ${e.join(", ")}.`:""}function ik(t,e,n,o){if(t!=="cut"||!e.cut)return u;let i=Math.max(e.cut.rows,e.cut.columns);return M`${Array.from({length:i-1},(s,a)=>{let c=n.left+(n.right-n.left)*(a+1)/i;return M`<line class="knife" x1=${c} x2=${c} y1=${-o.line} y2="0" />`})}`}function sk(t,e){let n=R(pt(l.units,e.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[t]} is shaded. Pour line ${n} below the brim. ${Nl(e)}`.trim()}var rk=t=>`set-up ${t}`;function Bt({name:t,title:e,drawing:n,result:o,about:i,form:s}){let a=rk(t),c=()=>Qt({part:e,fold:a},s);if(ii())return r`${c()}`;i.some(([m,g])=>Gt(m,g))&&st(a);let d=l.open.has(a),p=io().filter(({folds:m})=>m.includes(a)).length;return r`<section class="lane ${t} ${d?"is-open":""}" aria-labelledby="lane-${t}">
    <div class="part-line">
      ${d||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${t}" tabindex="-1">${e}</h2>
        ${o} ${p?r`<p class="lacks">${p} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${d?"true":"false"}
        aria-label="${d?"Close":"Change"} ${e}"
        @click=${()=>zt("open",a)}
      >
        ${d?"Close":"Change"}
      </button>
    </div>
    ${d?r`<div class="lane-body">${c()}</div>`:u}
  </section>`}var ut=t=>r`<p class="order ${l.is_old&&l.plan?"old":""}">${t}</p>`;var lh=()=>S(ft).length>0,uh=()=>S(Zt).length>0;function ch(t,e,n,o){return t?.length===e.length?t[o]:t?.find(i=>i.name===n)}function dh(t){let e=t?S(ft).flatMap((n,o)=>fh(t,o)??[]):[];return Bt({name:"decorate",title:"Decorate",drawing:t&&(()=>nn("decorate",t)),result:e.length?e.map(n=>lk(t,n)):ut(ph(ft,tn)),about:[["run",ft.at]],form:()=>r`${t?r`<div class="side">${en("decorate",t)}</div>`:u}
        <div class="weights">${t?S(ft).map((n,o)=>ak(t,o)):u}</div>
        ${hh(ft,tn,Gf)}`})}var ph=(t,e)=>`${S(t).map((n,o)=>e(o)).join(", ")}, not yet with figures.`;function ak(t,e){let n=fh(t,e);return n?uk(t,n,e):u}function mh(t){let e=t?.dust?.length?S(Zt).map((n,o)=>dk(t,o)):void 0;return Bt({name:"dust",title:"Dust",drawing:t&&(()=>nn("dust",t)),result:e??ut(ph(Zt,sr)),about:[["run",Zt.at]],form:()=>r`<div class="side">${t?en("dust",t):u}</div>
        <div class="weights">${t?S(Zt).map((n,o)=>pk(t,o)):u}</div>
        ${hh(Zt,sr,qf)}`})}var fh=(t,e)=>ch(t.decorations,S(ft),F("run",`/decorations/${e}/name`),e);function hh(t,e,n){return r`<div class="all-questions">
    ${S(t).map((o,i)=>r`<section class="questions" id=${q(t,i)} aria-labelledby="${q(t,i)}-title">
          <div class="part-head">
            <h3 id="${q(t,i)}-title">${e(i)}</h3>
            ${Z(t,i,e(i))}
          </div>
          ${Qt({part:e(i)},()=>n(i))}
        </section>`)}
  </div>`}function lk(t,e){let n=e.tray_fills>0?`, in ${e.tray_fills} tray ${e.tray_fills===1?"fill":"fills"}`:"",o=R(et(l.units,yt(e,"make_")));return ut(r`Cast <b>${e.casts}</b> of ${e.name} ahead${n}, from <b>${o}</b> of
      ${e.material}${bt(t.whole)?", for the whole run":""}.`)}function uk(t,e,n){return r`<h3>${e.name} ${bt(t.whole)?r`<small>for the whole run</small>`:u}</h3>
    ${A({key:`set-up.decorations.${n}.make`,label:`Melt of ${e.material}`,shown:et(l.units,yt(e,"make_")),of:`decorations.${n}.make_g`})}
    ${A({key:`decorations.${n}.each`,label:"Each weighs",note:`${k(e.volume_each_ml,2)} ml`,shown:O(l.units,e.mass_each_g,2),of:`decorations.${n}.mass_each_g`})}
    ${e.casting_s?r`<p>${Ve(e.casting_s)} of casting.</p>`:u} ${ck(e,n)}`}function ck(t,e){let{on_top:n,buried:o}=t;if(!n&&!o)return u;let i=a=>a===null?"not known":R(pt(l.units,a)),s=a=>{let c=(o?.embeds??[]).map(a).filter(d=>d!==null);return c.length?R(pt(l.units,Math.min(...c))):"nothing near"};return r`<h4>Fit of ${t.name}</h4>
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
                <dd>${k(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${vn(`decorations.${e}.fit`,"How the fit is measured",`decorations.${e}.${n?"on_top":"buried"}`)}`}function dk(t,e){let n=gh(t,e);if(!n)return u;let o=tt(t);return ut(r`<b>${R(et(l.units,yt(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var gh=(t,e)=>ch(t.dust,S(Zt),F("run",`/dust/${e}/name`),e);function pk(t,e){let n=gh(t,e);if(!n)return u;let o=_("run",`/dust/${e}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,s=A({key:`set-up.dust.${e}`,label:n.name,note:tt(t),shown:et(l.units,yt(n,"")),of:`${t.place}.dust.${e}.g`});return r`${s}${i?r`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function _h(t){let e=t?.cut;return Bt({name:"cut",title:"Cut",drawing:t&&(()=>nn("cut",t)),result:e?mk(t,e):ut("Cut into bars, not yet with figures."),about:[["run","/cut"]],form:()=>r`${e?fk(t,e):u}
        <div class="all-questions">${jf()}</div>`})}var mk=(t,e)=>ut(r`Cut <b>${e.bars_each} bars</b> from each, ${e.columns} by ${e.rows}; a bar is
      ${R(O(l.units,t.piece.fresh_g))} on average, fresh.`);function fk(t,e){return r`<div class="side">${en("cut",t)}</div>
    <div class="weights">
      ${A({key:"cut.bar",label:"A bar on average, fresh",note:hk(e),shown:O(l.units,t.piece.fresh_g),of:"cut.bars_each"})}
      ${A({key:"cut.offcuts",label:"Offcuts",shown:O(l.units,e.offcuts_g),of:"cut.offcuts_g"})}
      ${gk(e)}
    </div>`}function hk(t){let e=t.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...e)*10)/10,o=Math.ceil(Math.max(...e)*10)/10;return`${k(n,1)} to ${k(o,1)} g`}function gk(t){return t.one_more?.length?r`<ul class="limits">
    ${t.one_more.map(e=>r`<li>Cut to ${e.size_text} along ${e.direction}: ${e.bars} bars from each.</li>`)}
  </ul>`:u}function $h(t){return Bt({name:"label",title:"Label",drawing:$k,result:ut(_k(t)),about:[["run","/label"]],form:()=>r`<div class="more">${th()} ${t?Ol(t):u}</div>`})}function _k(t){let e=t?.piece.label_g;return!t?.label||e===null||e===void 0?"A draft of the label, not yet with figures.":r`Net weight for the label <b>${R(O(l.units,e,0))}</b>, sold in the ${t.label.market}.`}var $k=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${M`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var sn="/pour/layers",on={at:sn,in_order:!0},ql=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],ar=()=>S(on);function wk(){let t=e=>ar().some(n=>e in n);return ql.map(([e])=>e).find(t)??(t("rest")?"depth":"parts")}function bh(t){let e=ar(),n=wk();return e.length?r`<h3>
      Layers, lowest first ${t&&tt(t)?r`<small>${tt(t)}</small>`:u}
    </h3>
    ${x({question:"All of them by",at:sn,is_told_elsewhere:!0,chosen:n,answers:ql,puts:o=>yk(o,t)})}
    <div class="items">${e.map((o,i)=>vk(o,i,n,t))}</div>
    ${Q(on,"One more layer on top",()=>K(on,{name:bk(e),[n]:""},"layer"))}`:r`<p class="choice">
      ${Q(on,"Pour it in layers",()=>K(on,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function bk(t){for(let e=t.length+1;;++e)if(!t.some(n=>n.name===`Layer ${e}`))return`Layer ${e}`}function yh(t,e,n){let o=t?.pour.layers?.[n];return o?.name===e.name?o:void 0}function yk(t,e){let n=ar(),o=l.is_old?void 0:e,i=(s,a)=>{let c=yh(o,s,a);return t==="parts"||!c||t==="depth"&&"tilted"in s?"":t==="depth"?`${k(c.to_mm-c.from_mm,3)} mm`:`${k(c.mass_each_g,3)} g`};return n.map((s,a)=>{let c=rr(a),d=t!=="parts"&&n.length>1&&a===n.length-1;return{...c,...d?{rest:!0}:{[t]:i(s,a)}}})}var rr=t=>X("run",`${sn}/${t}`,[...ql.map(([e])=>e),"rest"]);function vk(t,e,n,o){let i=`${sn}/${e}`,s=String(t.name)||`Layer ${e+1}`,a=yh(o,t,e);return r`<div class="part" id=${q(on,e)} role="group" aria-label="Layer ${s}">
    ${a&&o?kk(o,a,e):r`<p class="part-title">${s}</p>`} ${H("run",i)}
    ${Tk(t,e,n,s)}
    ${o&&a?a.colours.map((c,d)=>xk(o,c,e,d)):u}
    ${P({name:i,pointers:["name","colours","tilted"].map(c=>`${i}/${c}`),summary:"Name, colours, tilt",body:()=>r` ${h({label:"Name of the layer",at:`${i}/name`})} ${Pk(i,s)} ${Dk(i,e)}
        ${Z(on,e,s)}`})}
  </div>`}function kk(t,e,n){return A({key:`pour.layer.${n}`,label:e.name,note:`${ka(pt(l.units,e.to_mm-e.from_mm))} thick, ${ka(O(l.units,e.mass_each_g))} each`,shown:e.g_text===void 0?O(l.units,e.g):et(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.g`})}function xk(t,e,n,o){return A({key:`pour.layer.${n}.${o}`,label:e.name,note:e.teaspoons?`about ${k(e.teaspoons,1)} tsp`:"",shown:wn(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.colours.${o}.g`})}function Tk(t,e,n,o){if(n==="parts")return Rk(t,e,o);let i="rest"in t;return r`${i?u:h({label:`${o}, ${n}`,at:`${sn}/${e}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?Ak(e,n):Sk(e,n)}
    >
      Takes the rest
    </button>`}function Rk(t,e,n){let o=`${sn}/${e}/parts`,i=s=>()=>{f({typed:void 0}),j("run",o,Math.max(1,(Number(t.parts)||0)+s))};return r`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${h({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function Sk(t,e){let n=ar().map((o,i)=>i===t?{...rr(i),rest:!0}:o.rest?{...rr(i),[e]:""}:o);L("run","takes the rest",sn,n)}function Ak(t,e){let n=`${sn}/${t}`;L("run","amount of the layer",n,{...rr(t),[e]:""},mt("run",`${n}/${e}`))}function Pk(t,e){let n={at:`${t}/colours`,in_order:!0};return r`${S(n).map((o,i)=>{let s=`${n.at}/${i}`,a=String(o.name)||`colour ${i+1}`;return r`<div class="part" id=${q(n,i)} role="group" aria-label="${a} in ${e}">
      <div class="part-head">
        <p class="part-title">Colour: ${a}</p>
        ${Z(n,i,a)}
      </div>
      ${H("run",s)}
      <div class="row">
        ${h({label:"Colour",at:`${s}/name`})}
        ${h({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${h({label:"Bulk density (for spoons)",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${Ge("run",s,a)}
    </div>`})}
  ${Q(n,"Add a colour",()=>K(n,{name:"",rate:""},"colour"))}`}var wh=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function Dk(t,e){let n=`${t}/tilted`,o=_("run",`${n}/low_side`);return e===S(on).length-1&&_("run",n)===void 0?r`<p class="hint">The last layer is poured level.</p>`:Pe({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>r`${h({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${x({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:wh,puts:s=>s})}
        ${P({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!wh.some(([s])=>s===o),body:()=>h({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var le=()=>$(l.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function Ul(t,e){let n=t.pour.depth_mm+t.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(e*2)/2),Math.floor(n*2)/2-.5),i=le()==="depth"?n-o:o;f({typed:void 0}),j("run",`/pour/line/${le()}`,`${k(i,2)} mm`)}function vh(t){let e=t.pour.depth_mm+t.pour.below_brim_mm,n=Zn($(l.run.now,`/pour/line/${le()}`));return n===void 0?t.pour.below_brim_mm:le()==="depth"?e-n:n}function Mk(t,e){let n=t.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(t.pointerId);let i=a=>e((a.clientY-t.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.removeEventListener(a,s)};n.addEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.addEventListener(a,s)}function Ok(t){if(!l.measured)return u;let e=t.pour.depth_mm+t.pour.below_brim_mm,n=vh(t),{share:o,h:i}=sh(t,e-n),s=d=>Mk(d,p=>Ul(t,n+p*i)),a=d=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[d.key];p!==void 0&&(d.preventDefault(),Ul(t,n+p))},c=d=>d&&(d.style.top=`${100*o}%`);return queueMicrotask(()=>c(document.querySelector(".line-handle")??void 0)),r`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(e)}
    aria-valuenow=${k(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${R(pt(l.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${a}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function Fk(t){let{pour:e}=t,n=R(pt(l.units,e.below_brim_mm)),o=e.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=t.cut?"the loaf":"each",s=tt(t);return ut(r`${o}, <b>${R(O(l.units,e.mass_each_g))}</b> ${i}; make
      <b>${R(O(l.units,e.make_g))}</b>${s?` for ${s}`:""}.`)}var kh=()=>le()==="depth"?"Depth":"Below brim";function xh(t){return Bt({name:"pour",title:"Pour",drawing:t&&(()=>nn("pour",t)),result:t?Fk(t):ut(`${Ck()}.`),about:[["run","/pour"]],form:()=>r`${t?Lk(t):Bk()}
        <div class="more">${lr("pour")} ${bh(t)} ${Ls("pour")}</div>`})}function Ck(){let t=F("run",`/pour/line/${le()}`);return t?`${t} ${le()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function Lk(t){let{pour:e}=t,n=`${t.place}.pour`,o=i=>()=>Ul(t,vh(t)+i);return r`<div class="side">
      ${en("pour",t,Ok(t))} ${Th(t)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${h({label:kh(),at:`/pour/line/${le()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${A({key:"pour.each",label:"Weigh into each",shown:O(l.units,e.mass_each_g),note:`${k(e.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${A({key:"pour.mm",label:"1 mm more or less",shown:_t(l.units,e.ml_per_mm,2),note:`${ge(e.ml_per_mm*e.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${A({key:"set-up.pour.make",label:"Base to make",note:tt(t),shown:O(l.units,e.make_g),of:`${n}.make_g`})}
      ${A({key:"pour.density",label:"Density",shown:[`${e.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var Bk=()=>r`<div class="side">
    ${Th()} ${H("run","/pour/line")}
    ${h({label:kh(),at:`/pour/line/${le()}`,unit:"mm"})}
  </div>`,lr=t=>r`<button type="button" @click=${()=>Vt(t)}>
    Change the formula of the ${t==="pour"?"base":"topping"}
  </button>`;function Th(t){let e=n=>{if(n===le())return;let o=t&&!l.is_old?t.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;L("run","pour line","/pour/line",{[n]:o===void 0?"":`${k(o,3)} mm`})};return ot("The pour line is measured",le(),[["below_brim","From the brim"],["depth","From the floor"]],e)}var Ek=[0,50,80,100];function Rh(t){let e=t?.pipe;return Bt({name:"pipe",title:"Pipe",drawing:e&&(()=>nn("pipe",t)),result:e?Wk(t,e):ut("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>e?Ik(t,e):Hk()})}function Wk(t,e){let n=tt(t);return ut(r`Pipe <b>${k(e.volume_each_ml,0)} ml</b> on each, ${R(O(l.units,e.mass_each_g))} at this
      whipped density; make <b>${R(O(l.units,e.make_g))}</b>${n?` for ${n}`:""}.`)}function Ik(t,e){return r`<div class="side">
      ${en("pipe",t)}
      ${A({key:"pipe.each",label:"Topping on each",shown:_t(l.units,e.volume_each_ml),note:`${k(e.in_headspace_each_ml,1)} ml of it below the brim`,of:`${t.place}.pipe.volume_each_ml`})}
      ${A({key:"set-up.pipe.make",label:"Topping to make",note:tt(t),shown:O(l.units,e.make_g),of:`${t.place}.pipe.make_g`})}
      ${A({key:"pipe.density",label:"Whipped density",note:`overrun ${k(e.overrun_percent,0)} %`,shown:[`${e.density_g_per_ml} g/ml`,""],of:`${t.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${lr("pipe")}
    </div>
    <div class="weights">${tl(e)} ${Dh()} ${jk(t)} ${Vk(t)}</div>
    <div class="more">${Xa(e)} ${Za()}</div>`}var Ri=t=>t===0?"pipe":`pipe.whipping${t}`,Si=(t,e)=>`${t.place}.pipe.whippings.${e}`;function Sh(t,e){let n=fs(t,e);return n?r`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function Hk(){return r`<div class="more">${Xa()}</div>
    <div class="side">${Dh()} ${_("run","/pipe/whip_now")===void 0?u:Ph()}</div>
    <div class="weights">${tl()} ${lr("pipe")}</div>
    <div class="more">${Za()}</div>`}var Ah=t=>tt(t)?r`<small>${tt(t)}</small>`:u;function jk(t){return r`<h3>Today's bowl ${Ah(t)}</h3>
    ${Ph()} ${t.whippings.map((e,n)=>Nk(t,e,n))}`}function Nk(t,e,n){let o=e.pieces_now,i=o==null?0:e.pieces-o,s=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${e.pieces} to make.`;return r`${Sh(t,e)}
  ${o==null?u:A({key:`${Ri(n)}.now`,label:"Enough for",note:s,shown:[at(o,"piece"),""],size:"weigh",of:`${Si(t,n)}.pieces_now`})}
  ${Uk(t,e,n)}`}function Ph(){let t=_("run","/pipe/whip/holds"),e=t===void 0?fi():{holds:t,net:""};return Pe({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:qk})}function qk(){return r`<div class="row">
    ${h({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${hi("/pipe/whip_now")}
  </div>`}function Uk(t,e,n){return e.readings?.length?P({name:`${Ri(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>zk(t,e,n)}):u}function zk(t,e,n){return r`<table class="readings">
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
              <th scope="row">${k(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${k(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${vn(`${Ri(n)}.readings`,"Show the calculation",`${Si(t,n)}.readings`)}`}function Dh(){let t="/pipe/fills_headspace",e=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(F("run",t))?.[1]?.replace(",",".")),n=Gt("run",t);return r`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${ze("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${Ek.map(o=>r`<button
            type="button"
            aria-pressed=${o===e?"true":"false"}
            @click=${()=>j("run",t,`${o} %`)}
          >
            ${Jk(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${h({label:"Headspace filled, as a share",at:t,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function Jk(t){let e=52*(t/100);return r`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${M`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-e/2} y="18" width=${e} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function Vk(t){let e=t.whippings.map(i=>({one:i,words:Kk(i)})).filter(({words:i})=>i),n=t.whippings[0],o=n?.limits??[];return!n||!o.length&&!e.length?u:r`<h3>Limits of whisk, bowl and time ${Ah(t)}</h3>
    ${e.map(({one:i,words:s})=>r`${Sh(t,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>r`<li class=${i.sets?"binds":""}>
            ${i.sets?r`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${vn("pipe.limits","How the limits come about",`${Si(t,0)}.limits`)}`}function Kk({piping_s:t,lye_spoonfuls:e}){return[t?`${Ve(t)} of piping`:"",e?`${e.count} spoonfuls of lye, ${Ve(e.altogether_s)}`:""].filter(Boolean).join("; ")}function Oh(t){return Bt({name:"lye",title:"Lye",drawing:Gk,result:t?Mh(t).map(Qk):ut("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>r`${t?r`<div class="more jugs">${Mh(t).map(Yk)} ${Xk(t)}</div>`:u}
        <div class="more">${Yf()} ${Zf(t)}</div>`})}function Mh(t){let{pieces:e}=t.batch,n={slot:"pour",title:t.pipe?"Lye for the base":"Lye",batter:t.pour,place:`${t.place}.pour`,pieces:e,key:"pour"},o=t.whippings.map((i,s)=>{let a=fs(t,i);return{slot:"pipe",title:`Lye for the topping${a&&`, ${a}`}`,batter:i,place:Si(t,s),pieces:e,key:Ri(s)}});return[n,...o]}function Qk({title:t,batter:e,slot:n,pieces:o}){let i=Ue(n,o).length?" \u26A0":"";return ut(r`${t}: ${k(e.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${Kt(e.superfat_percent.effective)}${i}</b>.`)}var Gk=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${M`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function Yk({slot:t,title:e,batter:n,place:o,pieces:i,key:s}){let{effective:a}=n.superfat_percent,c=Ue(t,i).length>0,d=`danger-set-up-${s.replaceAll(".","-")}`,p=s===t;return r`<div class="jug">
    <h3>${e} <small>${n.formula}</small></h3>
    ${A({key:`set-up.${s}.strength`,label:"Lye strength",note:`water ${k(n.water_to_pure_alkali,2)} : 1 to alkali; water ${k(n.water_percent_of_fats,1)} % of the fats`,shown:[`${k(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${A({key:`set-up.${s}.superfat`,label:"Superfat as weighed",shown:[`${Kt(a)}${c?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:s==="pour"?"superfat_as_weighed":void 0})}
    ${ei(t,d,i)} ${Fh(n.superfat_percent)} ${Zk(n,o,s)}
    ${!p||_(t,"/superfat")===void 0?u:h({label:"Planned superfat",of:t,at:"/superfat",unit:"%",described_by:c?d:void 0,hint:l.formulas[t]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Fh(t){let{low:e,high:n,likely_low:o,likely_high:i,uncertainties:s}=t,a=`It lies between ${Kt(e)} and ${Kt(n)}, as lots, purity and scales may fall`,c=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${Kt(o)} and ${Kt(i)}.`,d=s[0],p=d?r` Most of the doubt is ${d.cause}: ${d.remedy}.`:u;return va(e)?r`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${a}${c}
    ${d?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:r`<p class="aside of-plan">${a}${c} Some fat is left over even at the lowest.${p}</p>`}function Zk(t,e,n){return t.heat?r`${Ch(t.heat)} ${vn(`${n}.heat`,"How the heat is worked out",`${e}.heat`)}`:u}function Ch(t){let e=o=>R(_p(l.units,o)),n=t.cooling.map(o=>`${o.shortest_min*60?Ve(o.shortest_min*60):"at once"} to ${Ve(o.longest_min*60)} in ${o.in}`);return r`<p class="aside of-plan">
    Water at ${e(t.water_at_c)}: the lye may reach ${e(t.peak_c)}; it boils at
    ${e(t.boils_at_c)}.${n.length?` To cool: ${n.join("; ")}.`:""}${t.at_pour_c===null?"":` Lye and fats meet at about ${e(t.at_pour_c)}.`}
  </p>`}function Xk(t){let e=t.lye_pot;if(!e)return u;let{units:n}=l,o=(i,s,a,c,d="")=>A({key:`pot.${i}`,label:s,note:d,shown:a,size:"weigh",of:`${t.place}.lye_pot.${c}`});return r`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${k(e.strength_percent,1)} %${tt(t)&&`; ${tt(t)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",et(n,yt(e,"water_")),"water_g")}
    ${e.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,et(n,yt(i,""),"down"),`alkalis.${s}.g`))}
    ${o("lye","Lye solution in the pot",et(n,yt(e,"lye_")),"lye_g",tx(e))}
    ${e.shares.map((i,s)=>r`${o(`share.${s}`,`Out of it for ${i.batter}`,et(n,yt(i,"lye_"),"down"),`shares.${s}.lye_g`,`superfat then ${Kt(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,et(n,yt(i,"top_up_")),`shares.${s}.top_up_g`):u}
        ${ei(s===0?"pour":"pipe","",t.batch.pieces)}
        ${i.superfat?Fh(i.superfat):u}`)}
    ${e.left_g?r`<p class="aside of-plan">
            ${R(et(l.units,{g:e.left_g,g_text:e.left_g_text,oz_text:e.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${e.heat?Ch(e.heat):u}
  </div>`}function tx(t){if(t.full_pot_g===null)return"";let{g_text:e,oz_text:n,...o}=yt(t,"lye_"),i=et(l.units,{...o,g:t.full_pot_g,g_text:t.full_pot_g_text,oz_text:t.full_pot_oz_text});return`${R(i)} with the pot: make up with water to that after cooling`}var Ai=new Map,ex=()=>Ai.clear(),nx=t=>typeof t?.owned=="number"?t.owned:void 0;function zl(t){let e=Ct(t,l.files?.moulds);return Ai.has(e)||(Ai.set(e,void 0),ox(e)),Ai.get(e)}async function ox(t){try{Ai.set(t,nx(rt((await $t(t)).text))),z()}catch(e){if(!(e instanceof v))throw e}}async function Lh(t,e){let n=zl(t);n!==void 0&&(j("studio",e,n),E(`${n} kept in the studio`),await ix(Ct(t,l.files?.moulds)),Y())}async function ix(t){let e=await Ft(Ot,t);e.shipped||e.theirs||(ht(e,C(e.now,"/owned",void 0)),await me(e),ex())}var sx={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},Bh=t=>({run:t,studio:t}),Jl=t=>Bh(`/losses/${t}`);function Vl(t,e){return sx[t].map(({name:n,label:o,unit:i,optional:s})=>At(Bh(`/losses/${t}/${n}`),{label:e?`${e}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:s}))}var vo=t=>({run:t,studio:t}),Kl=t=>({run:`/pipe/${t}`,studio:`/${t}`}),rx=vo("/scales"),Eh=vo("/spoilage"),ax=vo("/pots");function Ql(t){return Bt({name:"studio",title:"My studio",result:ut(lx()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>ux(t)})}function lx(){let t=l.beside.studio?.file;return t?r`What is the same in every run, kept in ${t}.`:r`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function ux(t){let e=cx(t),n=e.flatMap(o=>o.all);return r`${St()?u:r`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Ka(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say.
            </p>`}
    <div class="studio-sections">
      ${e.map(({title:o,all:i,body:s})=>r`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${lo(o,i)}
            </div>
            ${s()}
          </section>`)}
    </div>`}function cx(t){let e=jt(),n=[{title:"Scales",all:[rx],body:dx},{title:"Losses",all:[Jl("pour"),...e?[Jl("pipe")]:[]],body:()=>px(e,t)},{title:"Rejects",all:[Eh],body:fx},{title:"Pot and lye jug",all:[ax],body:hx},{title:"Moulds owned",all:Wh().map(({shared:o})=>o),body:_x},{title:"Prices paid",all:gf(),body:_f}];return e&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(Kl),body:gx},{title:"Weigh-cups",all:[],body:pm}),St()&&_("run","/label")===void 0&&n.push({title:"Where it is sold",all:[yo],body:Hl}),n}function dx(){let t=(e,n)=>r`${At(vo(`/scales/${e}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:e==="large"?"scale_step":void 0})}
    ${At(vo(`/scales/${e}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return r`<div class="row">${t("large","Large scale")} ${t("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function px(t,e){return r`<div class="row">
      ${Vl("pour",t?"Base":void 0)} ${t?Vl("pipe","Topping"):u}
    </div>
    ${e?mx(e):u}`}function mx({pour:t,pipe:e,...n}){let o=tt({pour:t,pipe:e,...n}),i=(s,{in_pieces_g:a,lost_g:c})=>`${s}: ${R(O(l.units,a))} in the pieces, ${R(O(l.units,c))} lost.`;return r`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",t)} ${e?i("Topping",e):""}
  </p>`}var fx=()=>At(Eh,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function hx(){let t=(e,n,o)=>At(vo(`/pots/${e}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return r`<div class="row">
    ${t("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${t("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function gx(){let t=(n,o,i,s=!1)=>At(Kl(n),{label:o,unit:i,short:!0,optional:!0,is_due:s,takes_part:n!=="bag_holds"}),e=n=>xn(Kl(n))!==void 0;return r`<div class="row">
    ${t("bowl/holds","Bowl holds","l",e("bowl/whisk_needs"))}
    ${t("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${t("bag_holds","One bag holds","ml")}
    ${t("lye_spoon/holds","Lye spoon holds","ml",e("lye_spoon/time_between"))}
    ${t("lye_spoon/time_between","From one spoonful to the next","s",e("lye_spoon/holds"))}
  </div>`}function Wh(){return["/pour",...S(ft).map((e,n)=>bo(n))].flatMap(e=>{let n=F("run",`${e}/mould`);return n?[{mould:n,shared:{run:Ef(e),studio:`/moulds_owned/${Dt(Qa(n))}`}}]:[]})}function _x(){return r`<div class="row">
    ${Wh().map(({mould:t,shared:e})=>{let n=l.files?.moulds.find(s=>s.file===t)?.name??t,o=xn(e)===void 0?zl(t):void 0,i=()=>{Lh(t,`/moulds_owned/${Dt(Qa(t))}`)};return r`${At(e,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&St()?r`<button type="button" aria-label="Move the ${o} of ${n} into my studio" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function Gl(t){let e=t&&Yn(t);return r`${wx(t)}
    <div class="set-up">${Ih(e)} ${$x()} ${Ql(e)}</div>`}function Ih(t){return r`${xh(t)} ${jt()?Rh(t):u}
  ${lh()?dh(t):u} ${uh()?mh(t):u}
  ${Yt()?_h(t):u} ${Oh(t)} ${Il()?$h(t?.whole):u}`}function $x(){return r`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${jt()?u:r`<button type="button" @click=${mm}>Add a topping</button>${fm()}`}
      ${Qf()} ${Hf()}
      ${Il()?u:r`<button type="button" @click=${Xf}>Draft the label</button>`}
    </div>
  </section>`}function Hh(t=u){return r`<div class="row">
    ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${ro("Mould","/pour/mould",l.files?.moulds)}
    ${ro("Base","/pour/formula",l.files?.formulas)}
    ${jt()?ro("Topping","/pipe/formula",l.files?.formulas):u} ${t}
  </div>`}function wx(t){return r`<section class="order-of" aria-labelledby="run-title">
    ${typeof l.run.now.note=="string"?r`<p class="aside">${l.run.now.note}</p>`:u}
    ${Hh(t?bx(t):u)}
    <div class="batches">${t?eh(t):u} ${Bl()}</div>
  </section>`}function bx(t){let{sell:e,make:n,fillings:o,cavities:i,casts:s,batches:a}=t.pieces,c=bt(t)?`${a} batches, ${at(o,"filling")}`:hs(o,i);return A({key:"pieces.make",label:t.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} ${t.cut?"loaves":"casts"}, ${c}`:c,shown:[String(n),e===n?"":`for ${e}`],size:"weigh",of:"pieces.make"})}function yx(){let e=(l.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>l.formulas[n]).filter(vx);return[Qt({part:"Run"},()=>[Hh(),Bl()]),...e.map(n=>Qt({part:String(l.formulas[n].now.name||"Formula")},()=>Qm(n))),Ih(),Ql()]}var vx=(t,e,n)=>n.findIndex(o=>l.formulas[o]===l.formulas[t])===e;Rp(yx);var kx={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function jh(t){let e=s=>s.severity==="danger",n=[...t.cautions.filter(e),...t.cautions.filter(s=>!e(s))],o=s=>r`<ul>
      ${s.map(a=>r`<li class=${a.severity}><strong>${kx[a.severity]??a.severity}</strong> ${a.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return r`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?r`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function Nh(t,e){let n=t?.batches.findIndex(({numbers:a})=>a.includes(e))??-1;if(!t||n<0)return;let o=t.batches[n],i=e===1,s=o.weigh_out.filter(({vessel:a})=>a!=="melt"||i);return{plan:t,batch:o,place:`batches.${n}`,vessels:s,mark:o.mark}}function ko(t){let e=zn(t);return e?.finished_at?"done":e||Jn(t)?"under way":"not begun"}var xx=()=>Math.max(l.plan?.pieces.batches??0,...l.bench.batches.map(({batch:t})=>t));function Tx(t){let{chosen:e}=l.bench;if(e!==void 0&&e<=t)return e;let n=Array.from({length:t},(i,s)=>s+1),o=i=>n.find(s=>ko(s)===i);return o("under way")??o("not begun")??1}function Yl(){let t=xx(),e=Tx(t),n=zn(e),o=Nh(l.plan,e);return{number:e,of:t,kept:n,planned:o,weights:n?Nh(n.plan,e):o}}var Oe=({kept:t})=>!t&&l.is_old,xo=({plan:t,batch:e})=>t.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===e.pieces));var Rx=6,Sx={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function Uh({number:t,of:e}){if(e<2)return u;let n=Array.from({length:e},(i,s)=>s+1),o=i=>`Batch ${i}, ${ko(i)}`;return e>Rx?r`<select
      aria-label="Which batch is weighed"
      @change=${i=>qh(Number(i.target.value))}
    >
      ${n.map(i=>r`<option value=${i} ?selected=${i===t}>${o(i)}</option>`)}
    </select>`:ot("Which batch is weighed",String(t),n.map(i=>[String(i),r`<span class="status" aria-hidden="true">${Sx[ko(i)]}</span> ${i}<small>
          ${ko(i)}</small
        >`]),i=>qh(Number(i)))}function qh(t){$d(t),E(`Batch ${t}, ${ko(t)}`)}var ur="";function zh(t){let{kept:e,number:n}=t;if(!e)return u;if(e.finished_at)return Ax(t,e.finished_at);let i=(t.weights?.vessels??[]).flatMap(a=>a.rows).filter(({key:a})=>!$n(n,a).is_done).length,s=()=>i?Jh(e.id):void ia(n);return r`<div class="batch-end">
    <p class="aside">Begun ${Kh(e.begun_at)}; its weights stay as they were then.</p>
    ${ur===e.id?Vh(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{ia(n)}):r`<button type="button" class=${i?"":"strong"} ?disabled=${Jn(n)} @click=${s}>
            This batch is done
          </button>`}
  </div>`}function Ax({kept:t,number:e},n){let{id:o}=t;return r`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Kh(n)}.</p>
    ${ur===o?Vh("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Jo(e)}):r`<button type="button" @click=${()=>Jh(o)}>Start this batch anew</button>`}
  </div>`}function Jh(t){ur=t,z(),nt(I("batch-stays"))}function Vh(t,e,n){let o=()=>{ur="",z(),nt(I("run-title"))};return r`<p><b>${t}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${e}</button>
    </div>`}var Px=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Kh=t=>Px.format(new Date(t));var Dx={pour:"Base",pipe:"Topping"},Qh=t=>new Map(t.flatMap(e=>e.rows.map(n=>[n.key,{row:n,vessel:e}])));function Gh(t,e){let[n,o]=[Qh(t),Qh(e)],i=[...t,...e].some(({batter:p})=>p==="pipe"),s,a=({row:p,vessel:m})=>{let g=!i||m.batter===s;return s=m.batter,(g||!s?"":`${Dx[s]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},c=[...n].flatMap(([p,m])=>{let g=o.get(p)?.row;return g?.shown===m.row.shown?[]:[`${a(m)} ${m.row.shown}, ${g?`now ${g.shown}`:"now left out"}`]}),d=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${a(p)}, now ${p.row.shown}`);return[...c,...d]}var Zl=3,Xl=new Map,tu="";function Mx(t){let{kept:e,weights:n,planned:o,of:i}=t;if(!e||e.finished_at||!n)return;let{complaint:s}=l;if(s&&!du(s))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:U(s)};if(!o){if(!l.plan)return;let p=i>1?`the run has no batch ${t.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let a=Gh(n.vessels,o.vessels),c=new Set(xo(n).map(({text:p})=>p)),d=xo(o).flatMap(({text:p})=>c.has(p)?[]:[p]);return a.length||d.length?{told:a,dangers:d,mark:o.mark}:void 0}function Yh(t){let e=Mx(t),{kept:n}=t;if(!e||!n)return u;if(Xl.get(n.id)===e.mark)return Cx(n.id);let o=e.dangers.length>0||e.refusal!==void 0;return r`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${Ox(e)}
    </p>
    ${Fx(e)}
    ${e.dangers.map(i=>r`<p class="danger"><strong>${Te}</strong> As it is now: ${i}</p>`)}
    ${tu===n.id?Ex(t):Lx(t,e)}
  </div>`}function Ox({told:t,refusal:e}){if(e!==void 0)return r`<strong>No weights can be given as it is now:</strong> ${e}.`;let n=t.length-Zl;return r`${t.slice(0,Zl).join("; ")}${n>0?` and ${n} more.`:"."}`}var Fx=({told:t})=>t.length>Zl?r`<details>
        <summary>All ${t.length} changes</summary>
        <p>${t.join("; ")}.</p>
      </details>`:u;function Cx(t){return r`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Xl.delete(t),z())}>What has changed</button>
  </div>`}function Lx(t,{mark:e,refusal:n}){let{id:o}=t.kept;return r`<div class="row">
    <button type="button" class="strong" @click=${()=>{Xl.set(o,e),z(),nt(I("run-title"))}}>Keep weighing</button>
    ${n===void 0?r`<button type="button" @click=${()=>Bx(t)}>Start this batch anew</button>`:u}
  </div>`}function Bx(t){let{ticks:e,weigh_cup:n,id:o}=t.kept;if(!Object.keys(e).length&&n===void 0)return void Jo(t.number);tu=o,z(),nt(I("keep-weighing"))}function Ex(t){let e=Object.keys(t.kept.ticks).length,n=()=>{tu="",z(),nt(I("run-title"))},o=()=>{n(),Jo(t.number)};return r`<p>
      <b>${e===1?"The 1 tick":`All ${e} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var Zh=({text:t})=>r`<p class="danger"><strong>${Te}</strong> ${t}</p>`;function Xh(t){let e=new Set(l.dangers.run.map(({text:o})=>o)),n=xo(t).filter(({text:o})=>!e.has(o));return n.length?r`<div class="dangers" role="alert">${n.map(Zh)}</div>`:u}var Wx=({vessel:t})=>["lye","lye_pot","share"].includes(t),Ix=({batter:t},e)=>!t||!e.batter||t===e.batter;function tg(t,e){if(!Wx(e))return u;let n=xo(t).filter(o=>Ix(o,e));return n.length?r`<div class="dangers">${n.map(o=>r`${Zh(o)} ${Hx(o)}`)}</div>`:u}function Hx({batter:t,topic:e}){return!t||e==="heat"?r`<button type="button" class="to-cause" @click=${Nx}>To the cautions</button>`:r`<button type="button" class="to-cause" @click=${()=>jx(t)}>
    To the superfat of the ${t==="pour"?"base":"topping"}
  </button>`}function jx(t){Vt(t),requestAnimationFrame(()=>nt(mt(t,"/superfat")))}function Nx(){f({view:"watch"}),nt(I("watch-title"))}var eu=(t,e)=>r`<p class="do ${Oe(t)?"old":""}">${e}</p>`;function eg(t,{batch:e,plan:n}){let{below_brim_mm:o,mass_each_g:i}=e.pour,s=o<.05?"Pour to the brim":`Pour to ${R(pt(l.units,o))} below the brim`;return eu(t,r`${s}, <b>${R(O(l.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function ng(t,{batch:e}){let n=e.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?eu(t,r`Whip until the level weigh-cup holds <b>${R(O(l.units,n.net_g))}</b>.`):u}function og(t,{batch:e}){let{pipe:n}=e;return n?eu(t,r`Pipe <b>${k(n.volume_each_ml,0)} ml</b> on each, ${R(O(l.units,n.mass_each_g))} at the
      planned whipped density.`):u}function ig(t,{shown:e,beside:n}){if(t==="both")return[e,n];let o=t==="us"?"oz":"g";return[_e(n)===o?n:e,""]}function sg({batch:t,plan:e,place:n},o,i){switch(o.vessel){case"fats":case"lye":case"batter":return qx(o,i,t,n);case"layers":return Ux(i,t.pour.layers??[],`${n}.pour.layers`);case"dust":return nu(i.name,t.dust,`${n}.dust`);case"lye_pot":return i.role==="water"?`${n}.lye_pot.water_g`:nu(i.name,t.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let s=e.decorations.length===1?0:-1;return s<0?void 0:`decorations.${s}.make_g`}case"share":return}}function nu(t,e,n){let o=e.findIndex(i=>i.name===t);return o<0?void 0:`${n}.${o}.g`}function qx(t,e,n,o){let i=Number(/^pipe\.(\d+)\./.exec(t.key)?.[1]??1)-1,[s,a]=t.batter==="pipe"?[n.pipe?.whippings[i],`${o}.pipe.whippings.${i}`]:[n.pour,`${o}.pour`],c=(s?.ingredients??[]).findIndex(({name:d,goes_into:p})=>d===e.name&&p===t.vessel);return c<0?void 0:`${a}.ingredients.${c}.g`}function Ux(t,e,n){let o=(e??[]).findIndex(({name:i})=>i===(t.adding??t.name));return o<0||!t.adding?o<0?void 0:`${n}.${o}.g`:nu(t.name,e[o].colours,`${n}.${o}.colours`)}function ou(t,e,n){let o=n.words.filter(({is_order:s})=>s),i=n.rows.every(({key:s})=>$n(t.number,s).is_done);return r`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${rg(n)}>
    <div class="vessel-head">
      <h3 id=${rg(n)}>
        ${n.title}${n.times?r` <b>${n.times} times</b>`:u}${n.day_before?r` <b>the day before</b>`:u}${i?r` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:s})=>r`<p class="vessel-order">${s}</p>`)}
    </div>
    ${tg(e,n)}
    ${Xs(n.rows,({key:s})=>s,s=>zx(t,e,n,s))}
  </section>`}var rg=({key:t})=>`vessel-${t.replaceAll(".","-")}`;function zx(t,e,n,o){let{is_done:i,is_waiting:s}=$n(t.number,o.key),[a,c]=ig(l.units,o),d=Oe(t),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return r`<div class="weigh ${o.role} ${i?"done":""} ${s?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${W(i)}
        ?disabled=${t.kept?.finished_at!==void 0}
        @change=${g=>Jx(t,e,o,g.target)}
      />
      <span class="name"
        >${o.name}${m?r` <small>${m}</small>`:u}${s?r` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?r`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${d?"old":""}"><b>${a}</b>${c?r` <i>${c}</i>`:u}</span>
    </label>
    ${Vx(t,e,n,o)}
  </div>`}function Jx(t,{mark:e},n,o){if(!Oe(t))return hd(t.number,e,n.key,o.checked);o.checked=!o.checked,E("Not ticked: what is struck through is not to be weighed.")}function Vx(t,e,n,o){let{planned:i}=t,s=i&&i.mark===e.mark?sg(i,n,o):void 0;if(s===void 0)return u;let a=`weigh.${t.number}.${o.key}`,c=l.open.has(a),d=`sum-${a.replaceAll(/[^\w]/g,"-")}`;return r`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?d:u}
      @click=${()=>zt("open",a)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?r`<div class="sum" id=${d}>${Na(s)}</div>`:u}`}function iu(t,e){let n=t.flatMap(({title:o,words:i})=>i.filter(({is_order:s})=>!s).map(({text:s})=>({title:o,text:s})));return r`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${e} ${n.map(({title:o,text:i})=>r`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function ag(t,e){let{planned:n,whip_today:o}=l;return!e||!n?void 0:(o?.of===n&&o.batch===t&&o.reading===e||Kx(t,e),o?.batch===t&&o.reading===e?o:void 0)}var su=!1;async function Kx(t,e){let{planned:n}=l;if(su||!n)return;su=!0;let o={of:n,batch:t,reading:e},i={holds:$(n.run,"/pipe/whip/holds")??"",net:e};try{let s=await Di({...n,run:C(n.run,"/pipe/whip_now",i)});f({whip_today:{...o,...Qx(s,t)}})}catch(s){if(!(s instanceof v))throw s;f({whip_today:{...o,complaint:U(s.complaint)}})}finally{su=!1}}function Qx(t,e){let n=t.batches.find(({numbers:o})=>o.includes(e));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var au,ru,Gx=t=>au??(_e(t)==="oz"||!t&&l.units==="us"?"oz":"g");function lg(t,e){let n=e.batch.pipe?.whippings??[];if(!n.some(a=>a.readings.length))return u;let o=na(t.number),i=Gx(o),s=t.kept?.finished_at!==void 0;return r`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${Re("weigh_cup")}</div>
    ${re("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${W(ru??o)}
        ?disabled=${s}
        @input=${a=>ru=a.target.value}
        @change=${a=>Zx(t,e,a.target.value,i)}
      />
      ${ot("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],Yx)}
    </div>
    ${Xx(t,e,n,o)} ${eT(e,n)}
  </div>`}function Yx(t){au=t,z()}function Zx(t,{mark:e},n,o){ru=void 0;let i=Je(n)?`${n.trim()} ${o}`:n.trim();if(au=void 0,i===na(t.number))return z();if(Oe(t))return E("Not taken: the weights are not those of what is typed."),z();gd(t.number,e,i)}function Xx(t,e,n,o){if(!o)return u;let i=ag(t.number,o);return i?i.complaint!==void 0?r`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==e.mark?r`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:r`<div class="today" role="status">
    ${n.map((s,a)=>r`<p>${tT(s,i.pieces?.[a]??null)}</p>`)}
  </div>`:r`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function tT({pieces:t,count:e},n){if(n===null)return u;let o=e>1?"Each of these bowls pipes":"This bowl pipes",i=t-n;return r`${o} <b>${at(n,"piece")}</b> now.
    ${i>0?r`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${t} to make.`}`}function eT(t,e){let n=t.plan.cut?"casts":"pieces";return r`<details class="cup-table">
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
                  <th scope="row">${R(O(l.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${k(i.overrun_percent,0)} %</td>
                  <td>${t.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var Pi="pour",ug=()=>Yl().kept!==void 0;function cg(){as();let t=Yl(),e=l.bench.version!==void 0||l.bench.failed!==void 0;return r`<section class="weighing" data-part=${Pi} aria-labelledby="run-title">
    ${nT(t)} ${iT(t)}
    ${t.weights&&e?r`${Xh(t.weights)} ${Yh(t)} ${sT(t,t.weights)}`:u}
    ${zh(t)}
  </section>`}function nT(t){let{weights:e}=t;return r`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${e?.plan.run??String(l.run.now.name??"")}</h1>
    ${e?r`<p class="which">${oT(t,e)}</p>`:u}
    <div class="row">
      ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${Uh(t)}
    </div>
  </div>`}function oT(t,{plan:e,batch:n,vessels:o}){let i=o.flatMap(c=>c.rows),s=i.filter(({key:c})=>$n(t.number,c).is_done).length,a=t.of>1?`Batch ${t.number} of ${t.of}: `:"";return r`<b>${a}${he(e,n)}</b>, ${s} of ${i.length} weighed`}function iT({number:t,weights:e}){let{failed:n,unsent:o,told:i,complaints:s,version:a}=l.bench,c=o!==void 0&&Jn(t);return r`<div class="bench-told" role="status">
    ${i?.batch===t?r`<p class="alarm">${i.words}</p>
            <button type="button" @click=${wd}>I have looked</button>`:u}
    ${c?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?r`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${s.map(d=>r`<p class="alarm">${d}</p>`)}
    ${e||n!==void 0?u:r`<p class="hint">
            ${l.complaint?"No weights before this is corrected.":a===void 0?"Reading ...":""}
          </p>`}
  </div>`}function sT(t,e){let{vessels:n}=e,o=p=>n.filter(m=>m.batter===p),i=o(),s=i.filter(p=>p.day_before),a=i.filter(p=>!p.day_before),c=o("pipe").length>0,d=p=>p.map(m=>ou(t,e,m));return r`${dT(c,i)}
    <div class="batters ${c?"two":""}">
      ${cr("ahead","To have ready",d(s))}
      ${cr("base",c?"Base":"Batter",rT(t,e,o("pour"),s))}
      ${c?cr("topping","Topping",[...d(o("pipe")),uT(t,e),iu(o("pipe"),lT(t,e))]):u}
      ${cr("after","At the end",d(a))}
    </div>`}var cr=(t,e,n)=>n.some(o=>o!==u)?r`<div class="part-of ${t}">
        <h2 id="weigh-${t}">${e}</h2>
        ${n}
      </div>`:u;function rT(t,e,n,o){let i=({vessel:a})=>a==="layers",s=a=>a.map(c=>ou(t,e,c));return[...s(n.filter(a=>!i(a))),eg(t,e),...s(n.filter(i)),iu([...o,...n],aT(t,e))]}var dg=(t,e,n=u)=>r`<p class=${Oe(t)?"old":""}>
    <b>Superfat as weighed:</b> ${e.map(o=>Kt(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,aT=(t,{batch:e})=>dg(t,[e.pour],ze("superfat_as_weighed")),lT=(t,{batch:e})=>dg(t,e.pipe?.whippings??[]),uT=(t,e)=>r`${ng(t,e)} ${lg(t,e)} ${og(t,e)}`,cT={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function dT(t,e){let n=[...new Set(e.flatMap(({vessel:i})=>cT[i]??[]))].join(", ").toLowerCase(),o=[["pour",t?"Base":"Batter"],...t?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===Pi)||(Pi="pour"),r`<div class="narrow">${ot("What is shown",Pi,o,pT)}</div>`)}function pT(t){Pi=t,z(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var pg=()=>r`${fo(ug()?"No new weights can be given.":void 0)} ${cg()}`;var mT={"set-up":Gl,watch:jh,money:Sf,mould:Mf,print:Bf};function mg(t){let e=r`${is().map(o=>to(o))} ${os().map(eo)}`;if(t==="weigh")return r`${e} ${pg()}`;let{plan:n}=l;return r`${e} ${fo()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(l.run.now.name??"")}</h1>
    ${n?mT[t](n):fT(t)}`}function fT(t){return l.complaint?t==="set-up"?Gl():r`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:r`<p class="hint">Reading the run ...</p>`}var hT=()=>{f({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function hg(){let t=l.new_run;if(!t)return r`<p class="choice"><button type="button" class="strong" @click=${hT}>New run</button></p>`;let{name:e,mould:n,formula:o}=t,i=Es(t.sell),s=e.trim()&&n&&o&&i,a=()=>{Lt(async()=>{await ds({name:e.trim(),mould:n,formula:o,sell:i}),f({new_run:void 0})})};return r`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${W(e)}
          @input=${c=>y(t,{name:c.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${fg(t,"mould","Mould",gT())} ${fg(t,"formula","Base",_T())}
      ${Ws("new-run-sell",t.sell,c=>y(t,{sell:c}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${a}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${s?u:r`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var gT=()=>[...(l.files?.moulds??[]).filter(t=>!t.shipped).map(t=>[t.file,t.name||t.file]),...l.catalogue.map(t=>[t.path,t.name])],_T=()=>(l.files?.formulas??[]).map(t=>[t.file,t.name||t.file]);function fg(t,e,n,o){let i=`new-run-${e}`;return r`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${a=>y(t,{[e]:a.target.value})}>
      <option value="" .selected=${W(t[e]==="")}>choose ...</option>
      ${o.map(([a,c])=>r`<option value=${a} .selected=${W(a===t[e])}>${c}</option>`)}
    </select>
  </div>`}var $T=(t,e)=>(e.changed??"").localeCompare(t.changed??"");function _g(){let t=l.files?.runs??[],e=t.filter(o=>!o.shipped).sort($T),n=t.filter(o=>o.shipped);return r`${ho("Runs")} ${hg()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${e.length?Tn(e,gg):r`<p class="aside">No runs of your own in ${l.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Tn(n,gg)}
    </section>`}function gg(t){let{pieces:e,mould:n,due:o,made_on:i,changed:s}=t,a=[e===void 0?"":at(e,"piece"),n??"",o?`due ${Xn(o)}`:"",i?`made ${Xn(i)}`:s?`changed ${Xn(s)}`:""].filter(Boolean);return go({kind:pn,one:t,facts:a,picture:wT(n),open:()=>qe(t.file)})}var wT=t=>l.files?.moulds.find(e=>e.name===t)?.file??l.catalogue.find(e=>e.name===t)?.path;var bg=document.getElementById("page");function yg(){let{view:t,fault:e}=l;return r` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${df()} ${ap()}
    <main id="main" tabindex="-1" data-view=${t} class=${l.is_old&&!Xt(t)?"old-now":""}>
      ${e?r`${t==="reading"?r`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${e}</p>`:u}
      ${yT()}
    </main>
    <p class="unseen" role="status">${l.announcement}</p>`}var bT={runs:_g,formulas:nf,moulds:of};function yT(){let{view:t,fault:e}=l;return be(t)?mg(t):Xt(t)?bT[t]():t==="formula"?Km():e?u:r`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}Xu(()=>{Em(),ce(yg(),bg),xT()});ce(yg(),bg);document.addEventListener("keydown",t=>{if(!(t.ctrlKey||t.metaKey)||t.key.toLowerCase()!=="z"||Xt(l.view)&&!l.mould)return;t.preventDefault();let{undo:e,redo:n}=tr();(t.shiftKey?n:e)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Id();N(l.run)&&oe()});function vT(){if(!l.run.file)return lu();f({fault:void 0}),N(l.run)&&oe(),Y()}function lu(){f({fault:void 0}),zm().catch(t=>{f({fault:kT(t)}),t instanceof v&&t.may_pass&&window.setTimeout(lu,2e3)})}function kT(t){return t instanceof v&&[401,403].includes(t.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":t instanceof Error?t.message:String(t)}var $g=new ResizeObserver(([{target:t}])=>vg(t.offsetHeight)),wg=null;function xT(){let t=document.querySelector(".foremost");t!==wg&&($g.disconnect(),t?$g.observe(t):vg(0),wg=t)}var vg=t=>document.documentElement.style.setProperty("--foremost",`${t}px`);ip();Um();cu(t=>{po(),t&&vT()});lu();
